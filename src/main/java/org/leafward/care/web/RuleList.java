package org.leafward.care.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leafward.care.RulePacks;
import org.leafward.care.core.check.RuleSeasons;
import org.leafward.care.core.check.RuleSeasons.Quarter;
import org.leafward.care.core.rule.Grade;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.RulePack;
import org.leafward.care.core.rule.Work;
import org.leafward.measure.DayWindow;
import org.leafward.measure.Given;
import org.leafward.plants.Catalogue;
import org.leafward.plants.Species;
import org.springframework.stereotype.Component;

/** Finds rules by what they are about. */
@Component
class RuleList {

	private final RulePacks packs;

	private final Catalogue catalogue;

	private volatile @Nullable Dated dated;

	RuleList(RulePacks packs, Catalogue catalogue) {
		this.packs = packs;
		this.catalogue = catalogue;
	}

	/** When the rules of some packs fall, worked out as they are asked for. */
	private record Dated(String fingerprint, RuleSeasons seasons, Map<String, Optional<DayWindow>> windows) {
	}

	/**
	 * A rule with its pack.
	 *
	 * @param pack the pack
	 * @param rule the rule
	 */
	record Named(RulePack pack, Rule rule) {

		String reference() {
			return this.pack.reference(this.rule);
		}

	}

	/**
	 * What is looked for; blank or null is anything.
	 *
	 * @param q words of the rule
	 * @param season spring, summer, fall or winter
	 * @param group a plant group
	 * @param work a kind of work
	 * @param grade the grade of one of its sources
	 */
	record Filter(@Nullable String q, @Nullable String season, @Nullable String group, @Nullable String work,
			@Nullable String grade) {
	}

	/** The rules that fit, by pack and in the order written there. */
	List<Named> find(Filter filter) {
		Quarter quarter = given(filter.season) ? Given.word("season", filter.season, Quarter.class) : null;
		Work work = given(filter.work) ? Given.word("work", filter.work, Work.class) : null;
		Grade grade = given(filter.grade) ? Given.word("grade", filter.grade, Grade.class) : null;
		String group = filter.group;
		List<Species> ofGroup = given(group)
				? this.catalogue.all().stream().filter((one) -> one.groups().contains(group)).toList() : List.of();
		String words = (filter.q != null) ? filter.q.strip().toLowerCase(Locale.ROOT) : "";
		RulePacks now = this.packs.latest();
		List<Named> found = new ArrayList<>();
		for (RulePack pack : now.all()) {
			for (Rule rule : pack.rules()) {
				if ((work == null || rule.work() == work)
						&& (grade == null || rule.sources().stream().anyMatch((source) -> source.grade() == grade))
						&& (!given(group) || ofGroup.stream().anyMatch(rule.concern()::addresses))
						&& (words.isEmpty() || text(pack, rule).contains(words))
						&& (quarter == null || quarters(now, pack, rule).contains(quarter))) {
					found.add(new Named(pack, rule));
				}
			}
		}
		return found;
	}

	private static boolean given(@Nullable String text) {
		return text != null && !text.isBlank();
	}

	private static String text(RulePack pack, Rule rule) {
		return Stream
			.of(pack.reference(rule), rule.title(), rule.text().what(), rule.text().why(), rule.text().otherwise(),
					rule.work().words())
			.filter((part) -> part != null)
			.reduce("", (all, part) -> all + ' ' + part)
			.toLowerCase(Locale.ROOT);
	}

	private Set<Quarter> quarters(RulePacks now, RulePack pack, Rule rule) {
		return window(now, pack, rule).map(RuleSeasons::quarters).orElse(Set.of());
	}

	/** When a rule falls on the reference climate. */
	Optional<DayWindow> window(RulePacks now, RulePack pack, Rule rule) {
		Dated known = this.dated;
		if (known == null || !known.fingerprint.equals(now.fingerprint())) {
			known = new Dated(now.fingerprint(), new RuleSeasons(this.catalogue.all(), now.phenology()),
					new ConcurrentHashMap<>());
			this.dated = known;
		}
		RuleSeasons seasons = known.seasons;
		synchronized (seasons) {
			return known.windows.computeIfAbsent(pack.reference(rule), (reference) -> seasons.window(rule));
		}
	}

	/** The groups that some rule addresses. */
	Set<String> groups() {
		Set<String> groups = new TreeSet<>();
		this.packs.all().forEach((pack) -> pack.rules().forEach((rule) -> groups.addAll(rule.concern().groups())));
		return groups;
	}

	/** One rule, with the packs that it was found in. */
	Optional<Named> find(RulePacks now, String pack, String rule) {
		return now.all()
			.stream()
			.filter((one) -> one.id().equals(pack))
			.findFirst()
			.flatMap((one) -> one.find(rule).map((found) -> new Named(one, found)));
	}

}
