package org.leafward.care.pack;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.leafward.care.core.check.Contradiction;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.KnowledgeFile;
import org.leafward.knowledge.KnowledgeReader;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/**
 * Tasks and hold-offs of hand-made packs; the days are counted on the reference climates.
 */
class ContradictionsTests {

	private static final String HEAD = "version: 1\ntitle: Sample\nregion: Anywhere, for a test only.\nrules:\n";

	private static final String FREEZE = "{marker: last-spring-freeze, threshold: 32F, days: %d}";

	private static String rule(String id, String kind, String concerns, String from, String to, String more) {
		return """
				  - id: %s
				    kind: %s
				    work: prune
				    title: Do it
				    concerns: {%s}
				    from: %s
				    to: %s
				%s    text: {what: Do it., why: It helps.}
				    sources: [{title: Sample, grade: from-memory}]
				""".formatted(id, kind, concerns, from, to, more);
	}

	private static String task(String concerns, int from, int to, String more) {
		return rule("task", "do", concerns, FREEZE.formatted(from), FREEZE.formatted(to),
				"    effort: {minutes: 5, per: planting}\n" + more);
	}

	private static String holdOff(String concerns, int from, int to) {
		return rule("rest", "hold-off", concerns, FREEZE.formatted(from), FREEZE.formatted(to), "");
	}

	private static List<Contradiction> among(String task, String holdOff) {
		return new RulePackReader(new KnowledgeReader(), PlantsFixture.KNOWN, PlantsFixture.PHENOLOGY)
			.read(List.of(KnowledgeFile.of("rulepacks/a.yaml", "pack: a\n" + HEAD + task),
					KnowledgeFile.of("rulepacks/b.yaml", "pack: b\n" + HEAD + holdOff)))
			.contradictions();
	}

	@Test
	void sharedDaysAreCountedAndTheLongerSideIsLeft() {
		List<Contradiction> found = among(task("groups: [boxwood]", 0, 29, ""), holdOff("groups: [boxwood]", 10, 14));
		assertThat(found).singleElement().satisfies((one) -> {
			assertThat(one.task()).isEqualTo("a/task");
			assertThat(one.holdOff()).isEqualTo("b/rest");
			assertThat(one.shared()).isEqualTo(5);
			assertThat(one.left()).isEqualTo(15);
			assertThat(one.settled()).isFalse();
			assertThat(one.words()).contains("shares 5 days", "The hold-off goes before: the task is cut to 15 days.");
		});
	}

	@Test
	void despiteSettlesItAcrossPacks() {
		List<Contradiction> found = among(task("groups: [boxwood]", 0, 29, "    despite: [b/rest]\n"),
				holdOff("groups: [boxwood]", -10, 60));
		assertThat(found).singleElement().satisfies((one) -> {
			assertThat(one.settled()).isTrue();
			assertThat(one.words()).endsWith("It goes before the hold-off.");
		});
	}

	@Test
	void nothingEverLeftIsRefusedUnlessTheHoldOffIsForFewerPlantings() {
		String task = task("groups: [boxwood]", 0, 29, "");
		assertThatExceptionOfType(BrokenKnowledge.class)
			.isThrownBy(() -> among(task, holdOff("groups: [boxwood]", -10, 60)))
			.withMessageContaining("rulepacks/a.yaml:6:9: nothing is ever left of this task");
		assertThat(among(task, holdOff("groups: [boxwood], placement: container", -10, 60))).hasSize(1);
		assertThat(among(task, holdOff("groups: [boxwood], where: {regions: [US-MI]}", -10, 60))).hasSize(1);
		assertThat(among(task, holdOff("groups: [boxwood], years-since-planting: {below: 1}", -10, 60))).hasSize(1);
	}

	@Test
	void rulesForDifferentPlantingsDoNotMeet() {
		String task = task("groups: [boxwood], placement: ground, winters-indoors: false", 0, 29, "");
		assertThat(among(task, holdOff("groups: [oak]", 0, 29))).isEmpty();
		assertThat(among(task, holdOff("groups: [boxwood], placement: container", 0, 29))).isEmpty();
		assertThat(among(task, holdOff("winters-indoors: true", 0, 29))).isEmpty();
		assertThat(among(task, holdOff("groups: [boxwood]", 0, 29).replace("work: prune", "work: feed"))).isEmpty();
		assertThat(among(task, holdOff("groups: [boxwood]", 30, 60))).isEmpty();
	}

	@Test
	void aHoldOffThroughWinterReachesIntoTheNextSeason() {
		String winter = rule("rest", "hold-off", "groups: [boxwood]", "{marker: first-fall-freeze, threshold: 32F}",
				"{marker: last-spring-freeze, threshold: 32F, season: next, days: 4}", "");
		assertThat(among(task("groups: [boxwood]", 0, 29, ""), winter)).singleElement().satisfies((one) -> {
			assertThat(one.shared()).isEqualTo(5);
			assertThat(one.left()).isEqualTo(25);
		});
	}

	@Test
	void aRegionWhereTheTaskIsLeftOutDoesNotCount() {
		String task = task("groups: [boxwood]", 0, 29,
				"    regions: [{where: {regions: [US-MI]}, leave-out: true, why: Their law.}]\n");
		assertThat(among(task, holdOff("groups: [boxwood], where: {regions: [US-MI]}", 0, 29))).isEmpty();
	}

	@Test
	void eventsAreOnlyComparedWithTheSameEvent() {
		String task = task("groups: [boxwood]", 0, 29, "");
		String wound = rule("rest", "hold-off", "groups: [boxwood]", "{event: wound}", "{event: wound, days: 60}", "");
		assertThat(among(task, wound)).isEmpty();
		String afterWound = rule("task", "do", "groups: [boxwood]", "{event: wound, days: 50}",
				"{event: wound, days: 69}", "    effort: {minutes: 5, per: planting}\n");
		assertThat(among(afterWound, wound)).singleElement().satisfies((one) -> {
			assertThat(one.shared()).isEqualTo(11);
			assertThat(one.left()).isEqualTo(9);
		});
	}

}
