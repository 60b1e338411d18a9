package org.leafward.care.core.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.care.core.rule.RulePack;
import org.leafward.care.core.rule.Span;
import org.leafward.measure.Explanation;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;
import org.leafward.register.PlantingId;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leafward.care.core.plan.PlanFixture.FALL;
import static org.leafward.care.core.plan.PlanFixture.GROUND;
import static org.leafward.care.core.plan.PlanFixture.THAW;
import static org.leafward.care.core.plan.PlanFixture.boxwoodPlantedOn;
import static org.leafward.care.core.plan.PlanFixture.markers;
import static org.leafward.care.core.plan.PlanFixture.on;
import static org.leafward.care.core.plan.PlanFixture.pack;
import static org.leafward.care.core.plan.PlanFixture.rule;

class PlanDiffTests {

	private static final RulePack RULES = pack(
			rule("hold", TaskKind.HOLD_OFF, new Span(on(FALL, -56), on(GROUND, 0), 0, 1)),
			rule("mulch", TaskKind.DO, new Span(on(THAW, 0), on(THAW, 30), 0, 1)));

	private static final LocalDate TODAY = LocalDate.parse("2027-06-01");

	private final Subject subject = boxwoodPlantedOn("2015-04-01");

	private final Set<PlantingId> present = Set.of(new PlantingId(this.subject.id()));

	@Test
	void addsEverythingToNothing() {
		PlanDiff diff = diff(List.of(), plan(markers(), RULES), TODAY);
		// Not the mulch of the spring that is over.
		assertThat(diff.added()).extracting((task) -> task.rule() + " " + task.season())
			.containsExactlyInAnyOrder("test/hold 2027", "test/hold 2028", "test/mulch 2028");
		assertThat(diff.visible()).isTrue();
	}

	@Test
	void writesNothingTheSecondTime() {
		Plan plan = plan(markers(), RULES);
		assertThat(diff(stored(plan), plan, TODAY).isEmpty()).isTrue();
	}

	@Test
	void changesOnlyWhatHangsOnAMarkerThatMovedAndIsNotOver() {
		List<StoredTask> stored = stored(plan(markers(), RULES));
		PlanDiff diff = diff(stored, plan(markers().with(THAW, "03-09").with(GROUND, "12-12"), RULES), TODAY);
		assertThat(diff.added()).isEmpty();
		assertThat(diff.withdrawn()).isEmpty();
		assertThat(diff.changed()).extracting((task) -> task.rule() + " " + task.season())
			.containsExactlyInAnyOrder("test/hold 2027", "test/hold 2028", "test/mulch 2028");
	}

	@Test
	void tellsAnotherReasonFromAnotherDate() {
		List<StoredTask> stored = stored(plan(markers(), RULES)).stream()
			.map((task) -> new StoredTask(task.id(), task.planting(), task.plant(), task.rule(), task.season(),
					task.kind(), task.work(), task.window(), task.wording(), task.state(), new UUID(0, 0)))
			.toList();
		PlanDiff diff = diff(stored, plan(markers(), RULES), TODAY);
		assertThat(diff.visible()).isFalse();
		assertThat(diff.explained()).hasSize(3);
	}

	@Test
	void withdrawsWithTheReason() {
		List<StoredTask> stored = stored(plan(markers(), RULES));
		assertThat(diff(stored, plan(markers(), pack(RULES.rules().get(1))), TODAY).withdrawn()).hasSize(2)
			.allSatisfy((gone) -> assertThat(gone.because()).contains("no longer call for it"));
		assertThat(diff(stored, plan(markers().without(GROUND), RULES), TODAY).withdrawn()).hasSize(2)
			.allSatisfy((gone) -> assertThat(gone.because()).contains("No station tells ground-freeze p50."));
		assertThat(PlanDiff.between(stored, new Plan(List.of(), List.of()), Set.of(), TODAY, PlanDiffTests::name)
			.withdrawn()).hasSize(3)
			.allSatisfy((gone) -> assertThat(gone.because()).isEqualTo("The planting is no longer in the register."));
	}

	@Test
	void bringsAWithdrawnTaskBackUnderItsOldIdentifier() {
		Plan plan = plan(markers(), RULES);
		PlanDiff diff = diff(PlanFixture.stored(plan, TaskState.WITHDRAWN), plan, TODAY);
		assertThat(diff.added()).isEmpty();
		assertThat(diff.changed()).isEmpty();
		assertThat(diff.reopened()).hasSize(3);
	}

	@Test
	void leavesAloneWhatPeopleDidOrSkipped() {
		Plan moved = plan(markers().with(THAW, "03-09").with(GROUND, "12-12"), RULES);
		for (TaskState state : List.of(TaskState.DONE, TaskState.SKIPPED)) {
			List<StoredTask> stored = PlanFixture.stored(plan(markers(), RULES), state);
			assertThat(diff(stored, moved, TODAY).isEmpty()).isTrue();
			assertThat(diff(stored, Plan.NOTHING, TODAY).isEmpty()).isTrue();
		}
	}

	@Test
	void movesNoTaskThatStillRunsIntoThePast() {
		List<StoredTask> stored = stored(plan(markers(), RULES));
		LocalDate late = LocalDate.parse("2027-12-05");
		assertThat(diff(stored, plan(markers().with(GROUND, "12-01"), RULES), late).changed())
			.extracting(PlannedTask::season)
			.containsExactly(2028);
	}

	@Test
	void leavesThePastAsItWas() {
		List<StoredTask> stored = stored(plan(markers(), RULES));
		PlanDiff diff = diff(stored, plan(markers().with(THAW, "03-09"), RULES), LocalDate.parse("2029-01-01"));
		assertThat(diff.isEmpty()).isTrue();
		assertThat(diff(stored, new Plan(List.of(), List.of()), LocalDate.parse("2029-01-01")).isEmpty()).isTrue();
	}

	private Plan plan(PlanFixture.FixedMarkers markers, RulePack pack) {
		Season season = new Season(2027, Hemisphere.NORTH);
		return PlanFixture.planner(pack)
			.plan(PlanFixture.site(markers), List.of(this.subject), List.of(season, season.next()), TODAY);
	}

	private PlanDiff diff(List<StoredTask> stored, Plan plan, LocalDate today) {
		return PlanDiff.between(stored, plan, this.present, today, PlanDiffTests::name);
	}

	private static List<StoredTask> stored(Plan plan) {
		return PlanFixture.stored(plan, TaskState.PLANNED);
	}

	private static UUID name(Explanation explanation) {
		return PlanFixture.name(explanation);
	}

}
