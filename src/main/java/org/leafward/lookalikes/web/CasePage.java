package org.leafward.lookalikes.web;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.care.AddedTask;
import org.leafward.care.TaskLines;
import org.leafward.lookalikes.CaseDesk;
import org.leafward.lookalikes.CaseEnds;
import org.leafward.lookalikes.CaseId;
import org.leafward.lookalikes.CaseLook;
import org.leafward.lookalikes.CaseNote;
import org.leafward.lookalikes.CasePhotos;
import org.leafward.lookalikes.Cases;
import org.leafward.lookalikes.Laboratory;
import org.leafward.lookalikes.PlantCase;
import org.leafward.lookalikes.core.Answers;
import org.leafward.lookalikes.core.Cause;
import org.leafward.lookalikes.core.FollowUp;
import org.leafward.lookalikes.lab.Laboratories;
import org.leafward.measure.DayWords;
import org.leafward.measure.Hemisphere;
import org.leafward.pages.Choice;
import org.leafward.pages.Formats;
import org.leafward.pages.Mark;
import org.leafward.pages.print.Paper;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

/** The page of a case, for all who write something on it. */
@Component
class CasePage {

	private static final Set<String> FIELDS = Set.of("photo", "words", "result", "day", "cause", "helper");

	private final Cases cases;

	private final CaseEnds ends;

	private final CaseDesk desk;

	private final CasePhotos photos;

	private final Laboratories laboratories;

	private final Register register;

	private final People people;

	private final Regions regions;

	CasePage(Cases cases, CaseEnds ends, CaseDesk desk, CasePhotos photos, Laboratories laboratories, Register register,
			People people, Regions regions) {
		this.cases = cases;
		this.ends = ends;
		this.desk = desk;
		this.photos = photos;
		this.laboratories = laboratories;
		this.register = register;
		this.people = people;
		this.regions = regions;
	}

	/**
	 * A task that would go onto the calendar.
	 *
	 * @param mark sign of its kind
	 * @param days its days
	 * @param title what to do
	 * @param what how
	 * @param caution what can hurt; null when nothing can
	 */
	record Coming(Mark mark, String days, String title, String what, @Nullable String caution) {
	}

	/**
	 * A note.
	 *
	 * @param who who wrote it
	 * @param when when
	 * @param words what
	 * @param fromDesk whether the help desk did
	 */
	record Written(String who, String when, String words, boolean fromDesk) {
	}

	String show(CaseAccess.Seen seen, Map<String, String> errors, Model model) {
		PlantCase one = seen.plantCase();
		CaseLook look = this.cases.look(one);
		Optional<Site> site = site(one);
		CaseId follows = one.follows();
		Optional<PlantCase> former = (follows != null) ? this.cases.find(follows) : Optional.empty();
		LocalDate today = this.cases.today(one);
		boolean south = site.map((found) -> found.point().hemisphere() == Hemisphere.SOUTH).orElse(false);
		List<CaseView.Shown> shown = CaseView.shown(look);
		String chosen = Optional.ofNullable(one.cause()).orElse(shown.get(0).id());
		model.addAttribute("section", "cases");
		model.addAttribute("case", one);
		model.addAttribute("seen", seen);
		model.addAttribute("lead", CaseLead.of(look));
		model.addAttribute("known", look.ranking().known());
		model.addAttribute("next", look.next().isPresent());
		model.addAttribute("shown", shown);
		model.addAttribute("splits", CaseView.splits(look));
		model.addAttribute("answered", CaseView.answered(look, former.map(PlantCase::answers).orElse(Answers.EMPTY)));
		model.addAttribute("former", former.orElse(null));
		model.addAttribute("formerSeen", former.map((found) -> DayWords.of(found.seen())).orElse(null));
		model.addAttribute("record", CaseView.record(look));
		model.addAttribute("samples", CaseView.samples(look, today, south));
		model.addAttribute("laboratory", laboratory(one).orElse(null));
		model.addAttribute("papers", Paper.values());
		model.addAttribute("siteName", site.map(Site::name).orElse(null));
		model.addAttribute("firstSeen", DayWords.of(one.seen()));
		model.addAttribute("chosen", chosen);
		model.addAttribute("causes", shown.stream().map((cause) -> new Choice(cause.id(), cause.title())).toList());
		model.addAttribute("allCauses", allCauses(look));
		Optional<FollowUp.Planned> planned = one.closed() && one.cause() == null ? Optional.empty()
				: look.key().cause(chosen).flatMap((cause) -> this.ends.plan(one, cause.id()));
		model.addAttribute("coming", planned.map((plan) -> coming(plan.tasks(), today)).orElse(List.of()));
		model.addAttribute("onCalendar", planned.map(FollowUp.Planned::onCalendar).orElse(List.of()));
		model.addAttribute("undated", planned.map(FollowUp.Planned::undated).orElse(List.of()));
		model.addAttribute("remedies",
				planned.isPresent() ? List.of() : look.key().cause(chosen).map(Cause::remedies).orElse(List.of()));
		model.addAttribute("chosenTitle", look.key().cause(chosen).map(Cause::title).orElse(chosen));
		model.addAttribute("photos", this.photos.of(one.id()));
		model.addAttribute("mostPhotos", CasePhotos.MOST);
		model.addAttribute("notes", notes(one));
		model.addAttribute("owner", firstName(one.person()));
		PersonId assigned = one.assigned();
		model.addAttribute("assigned", (assigned != null) ? firstName(assigned) : null);
		model.addAttribute("helpers", seen.specialist() ? helpers(one) : List.of());
		model.addAttribute("today", today.toString());
		model.addAttribute("errors", leading(errors));
		return "lookalikes/case";
	}

	/** What no field of the page can mend leads to its end, where the case is closed. */
	private static Map<String, String> leading(Map<String, String> errors) {
		Map<String, String> led = new LinkedHashMap<>();
		errors.forEach((field, words) -> led.putIfAbsent(FIELDS.contains(field) ? field : "close", words));
		return led;
	}

	Optional<Site> site(PlantCase one) {
		SiteId id = one.site();
		return (id != null) ? this.register.find(id) : Optional.empty();
	}

	Optional<Laboratory> laboratory(PlantCase one) {
		String region = site(one).map(Site::region)
			.filter((found) -> !found.isEmpty())
			.or(() -> this.regions.counties()
				.stream()
				.filter((county) -> county.name().equalsIgnoreCase(one.county()))
				.map(County::region)
				.findFirst())
			.orElse("");
		return this.laboratories.of(one.county(), region);
	}

	private static List<Choice> allCauses(CaseLook look) {
		return Stream
			.concat(Stream.of(new Choice("", "Something else, as written below")),
					look.key()
						.causes()
						.stream()
						.map((cause) -> new Choice(cause.id(), cause.name()))
						.sorted(Comparator.comparing(Choice::words)))
			.toList();
	}

	private static List<Coming> coming(List<AddedTask> tasks, LocalDate today) {
		Formats formats = new Formats(today.getYear());
		return tasks.stream()
			.map((task) -> new Coming(TaskLines.mark(task.kind()), formats.window(task.window()), task.text().title(),
					task.text().what(), task.text().caution()))
			.toList();
	}

	private List<Written> notes(PlantCase one) {
		return this.desk.notes(one.id()).stream().map((note) -> written(note, one)).toList();
	}

	private Written written(CaseNote note, PlantCase one) {
		PersonId person = note.person();
		String who = (person != null) ? firstName(person) : "";
		return new Written(who, DayWords.of(LocalDateTime.ofInstant(note.at(), one.zone()).toLocalDate()), note.words(),
				note.fromDesk());
	}

	private List<Choice> helpers(PlantCase one) {
		List<Choice> helpers = new ArrayList<>();
		helpers.add(new Choice("", "Nobody yet"));
		this.desk.helpers(one.county())
			.forEach((person) -> helpers.add(new Choice(person.id().toString(), person.name())));
		return helpers;
	}

	/** No more of a name than that, and no part of an address that stands for one. */
	String firstName(PersonId id) {
		return this.people.find(id).map(Person::name).map((name) -> name.split("[\\s.@_+0-9]", 2)[0]).orElse("");
	}

}
