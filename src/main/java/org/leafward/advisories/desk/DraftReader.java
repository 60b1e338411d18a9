package org.leafward.advisories.desk;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.AdvisoryText;
import org.leafward.advisories.AlertFacts;
import org.leafward.advisories.Area;
import org.leafward.advisories.Bilingual;
import org.leafward.advisories.Category;
import org.leafward.advisories.Certainty;
import org.leafward.advisories.PlantChoice;
import org.leafward.advisories.Response;
import org.leafward.advisories.Severity;
import org.leafward.advisories.Urgency;
import org.leafward.advisories.core.chain.Content;
import org.leafward.advisories.core.chain.Outlines;
import org.leafward.care.core.rule.Work;
import org.leafward.measure.BadInput;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;
import org.leafward.plants.Catalogue;
import org.leafward.plants.SpeciesId;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.leafward.regions.core.Position;
import org.leafward.regions.core.Ring;
import org.springframework.stereotype.Component;

/** Makes a message of a form, or tells all that is missing and wrong in it. */
@Component
class DraftReader {

	/** Groups, traits and species together. */
	private static final int MOST_PLANTS = 60;

	private static final int LONGEST_EVENT = 60;

	private final Regions regions;

	private final Catalogue catalogue;

	DraftReader(Regions regions, Catalogue catalogue) {
		this.regions = regions;
		this.catalogue = catalogue;
	}

	/**
	 * Reads a form.
	 * @param fields the form
	 * @param condition code of the watched condition; null for none
	 * @return what the message will say
	 * @throws BadInput with every field that is missing or wrong
	 */
	Content read(DraftFields fields, @Nullable String condition) {
		Findings findings = new Findings();
		Supplier<Area> area = findings.read(() -> area(fields));
		Supplier<Bilingual> event = findings.read(() -> event(fields));
		Supplier<PlantChoice> plants = findings.read(() -> plants(fields));
		Supplier<Set<String>> works = findings.read(() -> works(fields));
		Supplier<AlertFacts> facts = findings.read(() -> facts(fields));
		ZoneId zone = zone(fields);
		Supplier<Instant> onset = findings.read(() -> time(fields, "onset", zone));
		Supplier<Instant> expires = findings.read(() -> time(fields, "expires", zone));
		Supplier<AdvisoryText> english = findings.read(() -> text(fields, ""));
		boolean inSpanish = !fields.text("headlineEs").isEmpty() || !fields.text("whatEs").isEmpty();
		Supplier<AdvisoryText> spanish = inSpanish ? findings.read(() -> text(fields, "Es")) : () -> english.get();
		findings.end();
		return new Content(condition, event.get(), facts.get(), area.get(), plants.get(), works.get(), onset.get(),
				expires.get(), zone, english.get(), inSpanish ? spanish.get() : null);
	}

	/**
	 * The counties that are chosen, as far as there are such.
	 * @param fields the form
	 * @return by name
	 */
	List<County> counties(DraftFields fields) {
		return this.regions.counties().stream().filter((one) -> fields.list("counties").contains(one.code())).toList();
	}

	/**
	 * Whose clock the times of the form have.
	 * @param fields the form
	 * @return that of the first county; UTC without one
	 */
	ZoneId zone(DraftFields fields) {
		return counties(fields).stream()
			.map(County::zone)
			.findFirst()
			.orElseGet(() -> this.regions.counties().stream().map(County::zone).findFirst().orElse(ZoneId.of("UTC")));
	}

	/**
	 * The plants that are chosen.
	 * @param fields the form
	 * @return never null
	 * @throws BadInput when one is not in the catalogue, or there are too many
	 */
	PlantChoice plants(DraftFields fields) {
		Set<String> groups = new LinkedHashSet<>(fields.list("groups"));
		Set<String> traits = new LinkedHashSet<>(fields.list("traits"));
		Set<String> species = new LinkedHashSet<>();
		for (String typed : fields.list("species")) {
			for (String one : typed.split("[\\n;]+")) {
				if (!one.isBlank()) {
					species.add(species(one.strip()));
				}
			}
		}
		if (groups.size() + traits.size() + species.size() > MOST_PLANTS) {
			throw new BadInput("more than %d plants are named".formatted(MOST_PLANTS), "groups",
					"choose a wider group, or none for everybody");
		}
		groups.stream().filter((one) -> !this.catalogue.groups().containsKey(one)).findFirst().ifPresent((one) -> {
			throw new BadInput("there is no plant group '%s'".formatted(one), "groups", "choose from the list");
		});
		traits.stream().filter((one) -> !this.catalogue.traits().containsKey(one)).findFirst().ifPresent((one) -> {
			throw new BadInput("there is no trait '%s'".formatted(one), "traits", "choose from the list");
		});
		return new PlantChoice(groups, traits, species);
	}

	/** By identifier, or by a name that is only one's. */
	private String species(String typed) {
		if (typed.matches("[a-z0-9]+(-[a-z0-9]+)*") && typed.length() <= 80
				&& this.catalogue.find(new SpeciesId(typed)).isPresent()) {
			return typed;
		}
		var called = this.catalogue.called(typed);
		if (called.size() == 1) {
			return called.get(0).id().value();
		}
		throw new BadInput(
				called.isEmpty() ? "no plant is called '%s' here".formatted(typed)
						: "several plants are called '%s'".formatted(typed),
				"species", called.isEmpty() ? "write its botanical name, or choose a group" : "write one of: "
						+ called.stream().map((one) -> one.botanicalName()).collect(Collectors.joining(", ")));
	}

	private Area area(DraftFields fields) {
		List<County> counties = counties(fields);
		if (counties.size() < fields.list("counties").size()) {
			throw new BadInput("a county is chosen that is not here", "counties", "choose from the list");
		}
		Area area = new Area(counties.stream().map(County::code).collect(Collectors.toCollection(TreeSet::new)),
				Outlines.read(fields.text("polygon").replace("\r", "")));
		for (Ring ring : area.rings()) {
			if (ring.positions().stream().noneMatch((corner) -> near(corner, counties))) {
				throw new BadInput("an outline lies outside of the counties", "polygon",
						"check whether latitude stands before longitude, and which counties are chosen");
			}
		}
		return area;
	}

	/** A corner may lie a little outside, as nobody draws along the line. */
	private static boolean near(Position corner, List<County> counties) {
		return counties.stream().map((one) -> one.area().extent()).anyMatch((box) -> {
			double margin = 0.5;
			return corner.longitude() > box.west() - margin && corner.longitude() < box.east() + margin
					&& corner.latitude() > box.south() - margin && corner.latitude() < box.north() + margin;
		});
	}

	private static Bilingual event(DraftFields fields) {
		String english = Given.line("event", fields.text("event"));
		String spanish = Given.line("eventEs", fields.text("eventEs"));
		if (english.length() < 3 || english.length() > LONGEST_EVENT || spanish.length() > LONGEST_EVENT) {
			throw new BadInput("what it is has %d characters".formatted(english.length()), "event",
					"say it in 3 to %d, such as Late freeze".formatted(LONGEST_EVENT));
		}
		return new Bilingual(english, spanish.isEmpty() ? english : spanish);
	}

	private static Set<String> works(DraftFields fields) {
		Set<String> known = Arrays.stream(Work.values()).map(Work::code).collect(Collectors.toSet());
		fields.list("works").stream().filter((one) -> !known.contains(one)).findFirst().ifPresent((one) -> {
			throw new BadInput("'%s' is no kind of work".formatted(one), "works", "choose from the list");
		});
		return new TreeSet<>(fields.list("works"));
	}

	private static AlertFacts facts(DraftFields fields) {
		Findings findings = new Findings();
		Supplier<Category> category = findings.read(() -> Category.of(fields.text("category")));
		Supplier<Urgency> urgency = findings.read(() -> Urgency.of(fields.text("urgency")));
		Supplier<Severity> severity = findings.read(() -> Severity.of(fields.text("severity")));
		Supplier<Certainty> certainty = findings.read(() -> Certainty.of(fields.text("certainty")));
		Supplier<Set<Response>> responses = findings.read(() -> {
			Set<Response> all = fields.list("responses").stream().map(Response::of).collect(Collectors.toSet());
			if (all.isEmpty()) {
				throw new BadInput("no kind of action is chosen", "responses",
						"choose one; 'nothing to do' is one too");
			}
			return all;
		});
		return findings.give(
				() -> new AlertFacts(category.get(), responses.get(), urgency.get(), severity.get(), certainty.get()));
	}

	/**
	 * A time of the form.
	 * @param fields the form
	 * @param name of the field
	 * @param zone whose clock
	 * @return the time
	 * @throws BadInput when it is none
	 */
	static Instant time(DraftFields fields, String name, ZoneId zone) {
		String given = fields.text(name).strip();
		try {
			return LocalDateTime.parse((given.length() == 16) ? given + ":00" : given).atZone(zone).toInstant();
		}
		catch (DateTimeException ex) {
			throw new BadInput(
					given.isEmpty() ? "the time is missing" : "'%s' is no time".formatted(Given.line(name, given)),
					name, "give day and time, such as 2027-04-21T02:00");
		}
	}

	/** The parts are named like the fields; those of another language end with it. */
	private static AdvisoryText text(DraftFields fields, String ending) {
		try {
			return new AdvisoryText(fields.text("headline" + ending), fields.text("what" + ending),
					fields.text("where" + ending), fields.text("when" + ending), fields.text("impacts" + ending),
					fields.text("toDo" + ending));
		}
		catch (BadInput ex) {
			List<BadInput> renamed = new ArrayList<>();
			ex.all().forEach((one) -> renamed.add(new BadInput(one.what(), one.where() + ending, one.mend())));
			throw BadInput.of(renamed);
		}
	}

}
