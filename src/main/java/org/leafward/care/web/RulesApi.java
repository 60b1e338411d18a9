package org.leafward.care.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.care.ReplanFailure;
import org.leafward.care.ReplanProgress;
import org.leafward.care.Replanning;
import org.leafward.care.RulePacks;
import org.leafward.care.TaskText;
import org.leafward.care.core.rule.Rule;
import org.leafward.measure.Given;
import org.leafward.measure.NotThere;
import org.leafward.plants.Catalogue;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;

/** The rules in use, and how far the tasks follow them, by API. */
@RestController
@Tag(name = "Rules", description = "The rules in use and how far the tasks follow them")
@RequestMapping("/api/v1")
class RulesApi {

	private static final int MOST_FAILURES = 200;

	private final RulePacks packs;

	private final RuleList rules;

	private final Catalogue catalogue;

	private final Replanning replanning;

	private final Clock clock;

	RulesApi(RulePacks packs, RuleList rules, Catalogue catalogue, Replanning replanning, Clock clock) {
		this.packs = packs;
		this.rules = rules;
		this.catalogue = catalogue;
		this.replanning = replanning;
		this.clock = clock;
	}

	/**
	 * A source as answered.
	 *
	 * @param title title
	 * @param publisher who published it
	 * @param address web address
	 * @param grade read-in-source, common-practice or from-memory
	 */
	record SourceAnswer(String title, @Nullable String publisher, @Nullable String address, String grade) {
	}

	/**
	 * A rule as answered.
	 *
	 * @param rule {@code pack/rule}
	 * @param version version of the pack in which it last changed
	 * @param kind do, hold-off, ramp-day or watch
	 * @param work the kind of work
	 * @param when its days in words
	 * @param weather what the weather has to say, in sentences
	 * @param whom whom it is for, in words
	 * @param text the words
	 * @param sources where it comes from
	 */
	record RuleAnswer(String rule, int version, String kind, String work, String when, List<String> weather,
			String whom, TaskText text, List<SourceAnswer> sources) {
	}

	/**
	 * How far replanning is.
	 *
	 * @param progress numbers over all nodes
	 * @param failures sites that failed, at most 200
	 */
	record ReplanAnswer(ReplanProgress progress, List<ReplanFailure> failures) {
	}

	@Operation(summary = "Rules by what they are about")
	@GetMapping("/rules")
	List<RuleAnswer> list(RuleList.Filter filter, @RequestParam(defaultValue = "0") int page,
			@RequestParam(defaultValue = "50") int size) {
		return this.rules.find(filter)
			.stream()
			.skip((long) Given.page(page) * Given.size(size))
			.limit(size)
			.map(this::answer)
			.toList();
	}

	@Operation(summary = "One rule")
	@GetMapping("/rules/{pack}/{rule}")
	RuleAnswer one(@PathVariable String pack, @PathVariable String rule) {
		return this.rules.find(this.packs.latest(), pack, rule)
			.map(this::answer)
			.orElseThrow(() -> new NotThere("There is no rule %s/%s".formatted(pack, rule)));
	}

	private RuleAnswer answer(RuleList.Named one) {
		Rule rule = one.rule();
		return new RuleAnswer(one.reference(), one.pack().versionOf(rule), Kinds.code(rule.kind()), rule.work().code(),
				RuleWords.when(rule.timing()), RuleWords.weather(rule),
				new WhomWords(this.catalogue).of(rule.concern()), rule.text(),
				rule.sources()
					.stream()
					.map((source) -> new SourceAnswer(source.title(), source.publisher(), source.address(),
							source.grade().code()))
					.toList());
	}

	@Operation(summary = "How far the tasks of all sites have been derived, counted over the last hour")
	@GetMapping("/replanning")
	ReplanAnswer replanning() {
		return new ReplanAnswer(this.replanning.progress(this.clock.instant().minus(1, ChronoUnit.HOURS)),
				this.replanning.failures(MOST_FAILURES));
	}

	@Operation(summary = "Queue all sites to be derived again")
	@PostMapping("/replanning")
	@ResponseStatus(HttpStatus.ACCEPTED)
	void all() {
		this.replanning.askAll();
	}

}
