package org.leafward.advisories.web;

import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.leafward.advisories.Category;
import org.leafward.advisories.Certainty;
import org.leafward.advisories.Response;
import org.leafward.advisories.Severity;
import org.leafward.advisories.Urgency;
import org.leafward.advisories.desk.DraftFields;
import org.leafward.care.core.rule.Work;
import org.leafward.pages.Choice;
import org.leafward.plants.Catalogue;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.springframework.stereotype.Component;

/** What the form of an advisory shows. */
@Component
class ComposeForm {

	private final Regions regions;

	private final Catalogue catalogue;

	ComposeForm(Regions regions, Catalogue catalogue) {
		this.regions = regions;
		this.catalogue = catalogue;
	}

	/**
	 * The form.
	 *
	 * @param fields what was given
	 * @param counties those to choose from, others that are chosen too
	 * @param groups plant groups
	 * @param traits traits of plants
	 * @param works kinds of work
	 * @param categories what it may be about
	 * @param responses kinds of action
	 * @param urgencies how soon
	 * @param severities how bad
	 * @param certainties how sure
	 * @param zone whose clock the times have
	 */
	record Form(DraftFields fields, List<Tick> counties, List<Tick> groups, List<Tick> traits, List<Tick> works,
			List<Choice> categories, List<Tick> responses, List<Choice> urgencies, List<Choice> severities,
			List<Choice> certainties, String zone) {

		public String text(String name) {
			return this.fields.text(name);
		}

		/**
		 * Species, a line for each.
		 * @return lines
		 */
		public String species() {
			return String.join("\n", this.fields.list("species"));
		}

		/**
		 * Whether a part that is folded has something in it.
		 * @return true with traits, species or an outline
		 */
		public boolean more() {
			return !species().isEmpty() || !text("polygon").isEmpty() || this.traits.stream().anyMatch(Tick::chosen);
		}

	}

	/** Something to tick. */
	record Tick(String value, String words, boolean chosen) {
	}

	Form of(DraftFields fields, List<County> served) {
		Set<String> chosen = Set.copyOf(fields.list("counties"));
		List<Tick> counties = this.regions.counties()
			.stream()
			.filter((one) -> served.contains(one) || chosen.contains(one.code()))
			.map((one) -> new Tick(one.code(), one.name(), chosen.contains(one.code())))
			.toList();
		return new Form(fields, counties,
				ticks(fields, "groups",
						this.catalogue.groups()
							.entrySet()
							.stream()
							.map((one) -> new Choice(one.getKey(), one.getValue()))
							.toList()),
				ticks(fields, "traits",
						this.catalogue.traits()
							.entrySet()
							.stream()
							.map((one) -> new Choice(one.getKey(), one.getValue()))
							.toList()),
				ticks(fields, "works", choices(Work.values(), Work::code, Work::words)),
				choices(Category.values(), Category::cap, Category::words),
				ticks(fields, "responses", choices(Response.values(), Response::cap, Response::words)),
				choices(Urgency.values(), Urgency::cap, (one) -> one.cap() + ": " + one.words()),
				choices(Severity.values(), Severity::cap, (one) -> one.cap() + ": " + one.words()),
				choices(Certainty.values(), Certainty::cap, (one) -> one.cap() + ": " + one.words()),
				zone(fields).getId());
	}

	private static List<Tick> ticks(DraftFields fields, String name, List<Choice> choices) {
		Set<String> chosen = Set.copyOf(fields.list(name));
		return choices.stream().map((one) -> new Tick(one.value(), one.words(), chosen.contains(one.value()))).toList();
	}

	private static <T> List<Choice> choices(T[] values, Function<T, String> value, Function<T, String> words) {
		return Arrays.stream(values).map((one) -> new Choice(value.apply(one), words.apply(one))).toList();
	}

	/** Whose clock the times of a form have: that of its first county. */
	ZoneId zone(DraftFields fields) {
		return this.regions.counties()
			.stream()
			.filter((one) -> fields.list("counties").contains(one.code()))
			.map(County::zone)
			.findFirst()
			.orElseGet(() -> this.regions.counties().stream().map(County::zone).findFirst().orElse(ZoneId.of("UTC")));
	}

}
