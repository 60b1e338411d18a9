package org.leafward.care.web;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.leafward.care.core.check.RuleSeasons;
import org.leafward.care.core.rule.Anchor;
import org.leafward.care.core.rule.Effort;
import org.leafward.care.core.rule.MarkerAnchor;
import org.leafward.care.core.rule.Ramp;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.Span;
import org.leafward.care.core.rule.Variant;
import org.leafward.measure.DayWindow;
import org.leafward.pages.Formats;
import org.leafward.plants.SpeciesId;

/** All that a rule says, line by line. */
final class RuleFacts {

	private final WhomWords whom;

	private final Formats formats;

	RuleFacts(WhomWords whom, Formats formats) {
		this.whom = whom;
		this.formats = formats;
	}

	List<Fact> of(Rule rule, Optional<DayWindow> window) {
		List<Fact> facts = new ArrayList<>();
		facts.add(new Fact("When", RuleWords.when(rule.timing()) + "."));
		window.ifPresent((days) -> facts
			.add(new Fact("About", "%s – %s in %s; the days at your site follow its own weather record.".formatted(
					this.formats.dayOfYear(days.from()), this.formats.dayOfYear(days.to()), RuleSeasons.PLACE))));
		RuleWords.weather(rule).forEach((sentence) -> facts.add(new Fact("Weather", sentence)));
		facts.add(new Fact("For", this.whom.of(rule.concern()) + "."));
		add(facts, "How much", rule.text().amount());
		add(facts, "Worked out", RuleWords.computes(rule));
		facts.add(new Fact("Why", rule.text().why()));
		add(facts, "Otherwise", rule.text().otherwise());
		Effort effort = rule.effort();
		if (effort.minutes() > 0) {
			facts.add(new Fact("Effort", RuleWords.effort(effort) + "."));
		}
		if (!effort.skills().isEmpty()) {
			facts.add(new Fact("Skills",
					String.join(", ", effort.skills().stream().sorted().map((one) -> one.replace('-', ' ')).toList())));
		}
		if (!effort.tools().isEmpty()) {
			facts.add(new Fact("Tools", String.join(", ", effort.tools())));
		}
		return facts;
	}

	private static void add(List<Fact> facts, String label, @Nullable String words) {
		if (words != null) {
			facts.add(new Fact(label, words));
		}
	}

	/** What differs from place to place. */
	List<Fact> regions(Rule rule) {
		return rule.variants()
			.stream()
			.map((variant) -> new Fact(WhomWords.where(variant.where()), words(variant)))
			.toList();
	}

	private static String words(Variant variant) {
		if (variant.leaveOut()) {
			return "Left out there. " + variant.why();
		}
		String from = (variant.from() != null) ? "From " + RuleWords.bare(variant.from()) : "";
		String to = (variant.to() != null) ? ((from.isEmpty() ? "To " : " to ") + RuleWords.bare(variant.to())) : "";
		return from + to + ". " + variant.why();
	}

	/** What differs from species to species. */
	List<Fact> bySpecies(Rule rule) {
		Map<String, String> lines = new TreeMap<>();
		rule.amounts().forEach((species, amount) -> lines.merge(this.whom.species(species), amount, RuleFacts::joined));
		rule.hurt()
			.bySpecies()
			.forEach((species, degrees) -> lines.merge(this.whom.species(species), "hurt at " + degrees.words(),
					RuleFacts::joined));
		if (rule.timing() instanceof Ramp ramp && ramp.light() != null) {
			ramp.light()
				.bySpecies()
				.forEach((species, degrees) -> lines.merge(this.whom.species(species),
						"no night outside below " + degrees.words(), RuleFacts::joined));
		}
		if (rule.timing() instanceof Span span) {
			span.from()
				.days()
				.bySpecies()
				.forEach((species, days) -> lines.merge(this.whom.species(species), "from " + RuleFacts.days(days),
						RuleFacts::joined));
			span.to()
				.days()
				.bySpecies()
				.forEach((species, days) -> lines.merge(this.whom.species(species), "to " + RuleFacts.days(days),
						RuleFacts::joined));
			waits(span.from()).forEach((species, event) -> lines.merge(this.whom.species(species),
					"no sooner than " + event, RuleFacts::joined));
		}
		return lines.entrySet().stream().map((one) -> new Fact(one.getKey(), one.getValue())).toList();
	}

	private static String joined(String one, String other) {
		return one + "; " + other;
	}

	private static String days(int days) {
		return (days == 0) ? "that day" : "%d days %s".formatted(Math.abs(days), (days < 0) ? "before" : "after");
	}

	/** The events at temperatures of their own that the beginning waits for. */
	private static Map<SpeciesId, String> waits(Anchor anchor) {
		Map<SpeciesId, String> events = new HashMap<>();
		MarkerAnchor marker = (anchor instanceof MarkerAnchor first) ? first : null;
		while (marker != null) {
			MarkerAnchor at = marker;
			at.bySpecies()
				.keySet()
				.forEach((species) -> events.merge(species, at.eventFor(species),
						(one, other) -> one + " and " + other));
			marker = marker.floor();
		}
		return events;
	}

}
