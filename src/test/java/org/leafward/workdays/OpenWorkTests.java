package org.leafward.workdays;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.PersonId;
import org.leafward.care.CareTask;
import org.leafward.care.TaskId;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.care.TaskText;
import org.leafward.care.core.rule.Work;
import org.leafward.care.pack.ConfiguredPacks;
import org.leafward.measure.DayWindow;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;
import org.leafward.workdays.core.plan.HoldOff;

import static org.assertj.core.api.Assertions.assertThat;

/** Which hold-offs forbid a task of a plan, with the rules that are configured. */
class OpenWorkTests {

	private static final PlantingId YEW = new PlantingId(UUID.randomUUID());

	private static final DayWindow SPRING = new DayWindow(LocalDate.of(2027, 3, 20), LocalDate.of(2027, 4, 20));

	private static final DayWindow APRIL = new DayWindow(LocalDate.of(2027, 4, 1), LocalDate.of(2027, 4, 30));

	/** Goes before the wait for what winter has browned, and before nothing else. */
	private static final CareTask PRUNING = task(YEW, "evergreen-pruning/needled-main-pruning", TaskKind.DO, SPRING,
			TaskState.PLANNED, Work.PRUNE);

	private final OpenWork work = new OpenWork(ConfiguredPacks.read());

	private static CareTask task(PlantingId planting, String rule, TaskKind kind, DayWindow window, TaskState state,
			Work work) {
		return new CareTask(new TaskId(UUID.randomUUID()), planting, "yew", new SiteId(UUID.randomUUID()), "Garden",
				new PersonId(UUID.randomUUID()), rule, 2027, 0, kind, window,
				new TaskText("Leave it", "Leave it.", null, "It heals.", null, null), state, null, 0, Instant.EPOCH,
				Instant.EPOCH, work, 1);
	}

	private List<HoldOff> forbidding(CareTask holdOff) {
		return this.work.holdOffs(PRUNING, List.of(PRUNING, holdOff));
	}

	@Test
	void forbidTheSameWorkOnTheSamePlant() {
		CareTask late = task(YEW, "evergreens/no-late-pruning", TaskKind.HOLD_OFF, APRIL, TaskState.PLANNED,
				Work.PRUNE);
		assertThat(forbidding(late)).containsExactly(new HoldOff(APRIL, "Leave it"));
		assertThat(this.work.of(PRUNING, List.of(late), 30, Set.of(), Set.of(), null, Set.of()).heldOff(APRIL.from()))
			.isNotNull();
	}

	@Test
	void doNotForbidWhatIsAnExceptionFromThem() {
		assertThat(forbidding(
				task(YEW, "evergreens/wait-on-winter-burn", TaskKind.HOLD_OFF, APRIL, TaskState.PLANNED, Work.PRUNE)))
			.isEmpty();
	}

	@Test
	void nothingElseForbids() {
		String rule = "evergreens/no-late-pruning";
		assertThat(forbidding(
				task(new PlantingId(UUID.randomUUID()), rule, TaskKind.HOLD_OFF, APRIL, TaskState.PLANNED, Work.PRUNE)))
			.as("another plant")
			.isEmpty();
		assertThat(forbidding(task(YEW, rule, TaskKind.HOLD_OFF, APRIL, TaskState.PLANNED, Work.FEED))).as("other work")
			.isEmpty();
		assertThat(forbidding(task(YEW, rule, TaskKind.HOLD_OFF, APRIL, TaskState.WITHDRAWN, Work.PRUNE)))
			.as("no longer planned")
			.isEmpty();
		assertThat(forbidding(task(YEW, rule, TaskKind.DO, APRIL, TaskState.PLANNED, Work.PRUNE))).as("to be done")
			.isEmpty();
	}

}
