package org.leafward.care.web;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskState;
import org.leafward.care.Undated;
import org.leafward.measure.DayWindow;
import org.leafward.measure.DayWords;
import org.leafward.measure.Explanation;
import org.leafward.measure.Given;
import org.leafward.measure.NumberWords;
import org.leafward.measure.Season;
import org.leafward.pages.Mark;
import org.leafward.pages.TaskLine;
import org.leafward.pages.YearStrip;
import org.leafward.plants.Catalogue;
import org.leafward.plants.Species;
import org.leafward.plants.SpeciesId;
import org.leafward.register.Beds;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.PlantingSize;
import org.leafward.register.Register;
import org.leafward.register.SeenSite;
import org.leafward.register.Site;
import org.leafward.register.SiteBeds;
import org.leafward.register.SiteMarkers;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.util.UriUtils;

/**
 * A site: its year as a strip, what comes next, what grows there, and its season markers.
 */
@Controller
class SitePage {

	/** Plantings of a page; the strip has a row for each. */
	private static final int PAGE = 20;

	/** How far a large site is read for what comes next. */
	private static final int SOON_DAYS = 60;

	private static final int MOST_SPECIES = 1_000;

	private static final int MOST_REASONS = 20;

	private static final int MOST_NAMED = 5;

	private final TaskCalendar calendar;

	private final Register register;

	private final Beds beds;

	private final SiteMarkers markers;

	private final Catalogue catalogue;

	private final Mine mine;

	private final SiteNow.Reader now;

	private final Clock clock;

	SitePage(TaskCalendar calendar, Register register, Beds beds, SiteMarkers markers, Catalogue catalogue, Mine mine,
			SiteNow.Reader now, Clock clock) {
		this.calendar = calendar;
		this.register = register;
		this.beds = beds;
		this.markers = markers;
		this.catalogue = catalogue;
		this.mine = mine;
		this.now = now;
		this.clock = clock;
	}

	/**
	 * A planting in the list of the site.
	 *
	 * @param id identifier
	 * @param count how many plants, in words
	 * @param label what its people call it
	 * @param commonName common name of the species
	 * @param botanicalName botanical name
	 * @param more where and since when
	 */
	record Listed(UUID id, String count, String label, String commonName, String botanicalName, String more) {
	}

	@GetMapping("/sites/{id}")
	String site(@PathVariable UUID id, @RequestParam(defaultValue = "0") int page,
			@RequestParam(defaultValue = "") String q, Model model) {
		int number = Given.page(page);
		SeenSite seen = this.mine.seen(id);
		Site site = seen.site();
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), site.zone());
		// From the month before to a year on: what was just missed, and all that is
		// coming.
		DayWindow year = new DayWindow(today.minusMonths(1).withDayOfMonth(1),
				today.plusMonths(12).withDayOfMonth(1).minusDays(1));
		List<Planting> plantings = this.register.plantingsOf(site.id());
		List<SiteMarkers.Line> lines = new ArrayList<>(season(site, year.from()));
		if (Season.containing(year.to(), site.point().hemisphere())
			.year() != Season.containing(year.from(), site.point().hemisphere()).year()) {
			lines.addAll(season(site, year.to()));
		}
		SiteNow now = now(seen,
				(plantings.size() > PAGE) ? new DayWindow(year.from(), today.plusDays(SOON_DAYS)) : year, year, today);
		model.addAttribute("section", "sites");
		model.addAttribute("site", site);
		model.addAttribute("seen", seen);
		model.addAttribute("live", seen.mayChange());
		model.addAttribute("now", now.now());
		model.addAttribute("tasks", now.next());
		model.addAttribute("lately", now.lately());
		List<Planting> shown = show(site, plantings, KeepPages.searched(q), number, today, model);
		YearStrip strip = SiteStrip.of(site, year, today, shown, drawn(site, shown, year), lines);
		model.addAttribute("strip", strip.rows().isEmpty() ? null : strip);
		model.addAttribute("stripRows", SiteStrip.inWords(strip));
		model.addAttribute("markers", steps(season(site, today)));
		List<String> undated = undated(site, plantings);
		model.addAttribute("undated", undated);
		model.addAttribute("lead", lead(plantings, now, !undated.isEmpty()));
		return "care/site";
	}

	/** A page of the plantings, those of a bed together. */
	private List<Planting> show(Site site, List<Planting> all, String words, int wanted, LocalDate today, Model model) {
		SiteBeds ground = this.beds.with(site);
		List<Planting> found = words.isEmpty() ? all : all.stream().filter(called(ground, words)).toList();
		int page = Math.min(wanted, Math.max(0, found.size() - 1) / PAGE);
		List<Planting> shown = SiteParts.inOrder(ground, found).stream().skip((long) page * PAGE).limit(PAGE).toList();
		int first = page * PAGE + 1;
		model.addAttribute("parts", SiteParts.of(ground, shown, all.size() <= PAGE && words.isEmpty(),
				(planting) -> listed(planting, today)));
		model.addAttribute("beds", !ground.beds().isEmpty());
		model.addAttribute("bedNames", (all.size() > PAGE) ? ground.beds() : List.of());
		model.addAttribute("many", all.size() > PAGE);
		model.addAttribute("q", words);
		model.addAttribute("part", shown.isEmpty() || found.size() <= PAGE ? null
				: "Plantings %d to %d of %d".formatted(first, first + shown.size() - 1, found.size()));
		model.addAttribute("page", page);
		model.addAttribute("hasNext", found.size() > (page + 1) * PAGE);
		String here = "/sites/" + site.id();
		model.addAttribute("here",
				words.isEmpty() ? here : here + "?q=" + UriUtils.encodeQueryParam(words, StandardCharsets.UTF_8));
		return shown;
	}

	/** By its own name, its bed, or the name of its plant in any language. */
	private Predicate<Planting> called(SiteBeds ground, String words) {
		String wanted = words.toLowerCase(Locale.ROOT);
		// Without a letter the catalogue would give all that it has.
		Set<SpeciesId> plants = words.codePoints().anyMatch(Character::isLetterOrDigit)
				? this.catalogue.search(words, MOST_SPECIES).stream().map(Species::id).collect(Collectors.toSet())
				: Set.of();
		return (one) -> plants.contains(one.species()) || one.label().toLowerCase(Locale.ROOT).contains(wanted)
				|| ground.of(one).filter((bed) -> bed.name().toLowerCase(Locale.ROOT).contains(wanted)).isPresent();
	}

	/**
	 * A year of a large site is some thousand tasks, of which next to none is shown here;
	 * only where little comes soon is the whole of it read. What was done more than two
	 * months before its time is then not among what changed lately.
	 */
	private SiteNow now(SeenSite seen, DayWindow near, DayWindow year, LocalDate today) {
		List<CareTask> tasks = this.calendar.ofSite(seen.site().id(), near);
		SiteNow now = seen.mayChange() ? this.now.of(tasks, today) : SiteNow.toLookAt(tasks, today);
		return (near.equals(year) || now.full()) ? now : now(seen, year, year, today);
	}

	/** What the strip of some plantings shows. */
	private List<CareTask> drawn(Site site, List<Planting> shown, DayWindow year) {
		return this.calendar.ofPlantings(site.id(), shown.stream().map(Planting::id).toList(), year)
			.stream()
			.filter((task) -> task.state() == TaskState.PLANNED || task.state() == TaskState.DONE)
			.toList();
	}

	private List<SiteMarkers.Line> season(Site site, LocalDate day) {
		return this.markers.of(site, Season.containing(day, site.point().hemisphere()).year());
	}

	private static String lead(List<Planting> plantings, SiteNow now, boolean undated) {
		if (plantings.isEmpty()) {
			return "Nothing is planted here yet.";
		}
		List<TaskLine> next = Stream.concat(now.now().stream(), now.next().stream()).toList();
		if (next.isEmpty()) {
			return undated ? "No care here could be dated yet; the reasons stand below."
					: "Nothing is due here in the year ahead.";
		}
		// What must be done soonest comes before what has been left alone since summer.
		TaskLine first = next.stream().filter((line) -> line.mark() != Mark.HOLD_OFF).findFirst().orElse(next.get(0));
		return (now.now().contains(first) ? "Now: “%s”, %s." : "Next: “%s”, %s.").formatted(first.title(),
				first.plant());
	}

	private static String planted(LocalDate day, LocalDate today) {
		return day.isAfter(today) ? ", to be planted " + DayWords.of(day) : ", planted " + day.getYear();
	}

	private Listed listed(Planting planting, LocalDate today) {
		Optional<Species> species = this.catalogue.find(planting.species());
		String more = planting.placement().words() + planted(planting.plantedOn(), today)
				+ (planting.wintersIndoors() ? ", indoors in winter" : "")
				+ (planting.saltExposed() ? ", reached by de-icing salt" : "") + size(planting.size());
		return new Listed(planting.id().value(), (planting.count() == 1) ? "1 plant" : planting.count() + " plants",
				planting.label(), species.map(Species::commonName).orElse(planting.species().value()),
				species.map(Species::botanicalName).orElse("no longer in the catalogue"), more);
	}

	private static String size(PlantingSize size) {
		StringBuilder words = new StringBuilder();
		if (size.squareMetres() != null) {
			words.append(", ")
				.append(NumberWords.fixed(size.squareMetres(), (size.squareMetres() < 10) ? 1 : 0))
				.append(" m²");
		}
		if (size.calliperMillimetres() != null) {
			words.append(", trunk of ").append(NumberWords.fixed(size.calliperMillimetres() / 10, 1)).append(" cm");
		}
		if (size.potLitres() != null) {
			words.append(", pot of ")
				.append(NumberWords.fixed(size.potLitres(), (size.potLitres() < 10) ? 1 : 0))
				.append(" l");
		}
		return words.toString();
	}

	/** The steps of the markers; one reason for all when none of them has a date. */
	private static List<Explanation> steps(List<SiteMarkers.Line> lines) {
		List<String> reasons = lines.stream()
			.map((line) -> (line.marker() != null) ? "" : Optional.ofNullable(line.missing()).orElse(""))
			.distinct()
			.toList();
		if (reasons.size() == 1 && !reasons.get(0).isEmpty()) {
			return List.of(Explanation.of("Freeze dates, warm and cool nights, frozen ground", "no dates")
				.withDetail(reasons.get(0)));
		}
		return lines.stream().map(SitePage::step).toList();
	}

	private static Explanation step(SiteMarkers.Line line) {
		return (line.marker() != null) ? line.marker().explanation()
				: Explanation.of(MarkerNames.full(line.key()), "no date")
					.withDetail(Optional.ofNullable(line.missing()).orElse(""));
	}

	private List<String> undated(Site site, List<Planting> plantings) {
		Map<PlantingId, String> labels = new LinkedHashMap<>();
		plantings.forEach((planting) -> labels.put(planting.id(), planting.label()));
		Map<String, Set<String>> reasons = new LinkedHashMap<>();
		for (Undated gap : this.calendar.undated(site.id())) {
			reasons.computeIfAbsent(gap.reason(), (reason) -> new LinkedHashSet<>())
				.add("%s (%s)".formatted(gap.title(), name(labels, gap.planting())));
		}
		return reasons.entrySet()
			.stream()
			.map((entry) -> words(entry.getKey(), entry.getValue()))
			.limit(MOST_REASONS)
			.toList();
	}

	private static String name(Map<PlantingId, String> labels, @Nullable PlantingId planting) {
		return (planting != null) ? labels.getOrDefault(planting, "planting") : "whole site";
	}

	private static String words(String reason, Set<String> care) {
		String named = String.join("; ", care.stream().limit(MOST_NAMED).toList());
		return (care.size() <= MOST_NAMED) ? "%s Waiting for it: %s.".formatted(reason, named)
				: "%s Waiting for it: %s; and %d more.".formatted(reason, named, care.size() - MOST_NAMED);
	}

}
