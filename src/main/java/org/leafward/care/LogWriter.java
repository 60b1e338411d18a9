package org.leafward.care;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.Work;
import org.leafward.care.store.LogTable;
import org.leafward.care.store.StateTable;
import org.leafward.measure.DayWords;
import org.leafward.register.NewWatering;
import org.leafward.register.PlantingId;
import org.leafward.register.Site;
import org.leafward.register.WateringId;
import org.leafward.register.Waterings;
import org.springframework.stereotype.Component;

/** Writes entries of the care log and what goes with them. */
@Component
class LogWriter {

	private static final int WATERING_NOTE = 200;

	private final LogTable log;

	private final StateTable states;

	private final Waterings waterings;

	private final RulePacks packs;

	private final SiteTurn turn;

	LogWriter(LogTable log, StateTable states, Waterings waterings, RulePacks packs, SiteTurn turn) {
		this.log = log;
		this.states = states;
		this.waterings = waterings;
		this.packs = packs;
		this.turn = turn;
	}

	/**
	 * Writes an entry in the caller's transaction.
	 * @param site where, locked
	 * @param planting what for; null for the site as a whole
	 * @param task the task; null when there is none
	 * @param work the kind of work
	 * @param done when and how much
	 * @param by who; null for an operator
	 * @return the entry, with a remark where it fell into a hold-off
	 */
	Logged write(Site site, @Nullable PlantingId planting, @Nullable CareTask task, Work work, WorkDone done,
			@Nullable PersonId by) {
		List<String> remarks = new ArrayList<>();
		Set<String> despite = Optional.ofNullable(task)
			.flatMap((one) -> this.packs.find(one.rule()))
			.map(Rule::despite)
			.map(Set::copyOf)
			.orElse(Set.of());
		CareTask hold = this.states.holdOffs(site.id(), planting, work, done.day())
			.stream()
			.filter((one) -> !despite.contains(one.rule()))
			.findFirst()
			.orElse(null);
		if (hold != null) {
			remarks.add(remark(hold, work));
		}
		LogId id = new LogId(UUID.randomUUID());
		if (work == Work.WATER) {
			Double depth = done.millimetres();
			if (depth != null && depth > 0) {
				// The watering's own identifier, so that both are taken back together.
				id = new LogId(this.waterings
					.record(site.id(), new NewWatering(planting, done.day(), depth, oneLine(done.note())), by)
					.id()
					.value());
			}
			else if (done.amount() != null) {
				remarks
					.add("The amount is in the log only: the water balance needs a depth, or a volume with its area.");
			}
		}
		LogEntry entry = new LogEntry(id, site.id(), planting, (task != null) ? task.id() : null, work, done.day(), by,
				done.amount(), done.unit(), done.note(), this.turn.now(), (hold != null) ? hold.id() : null,
				(hold != null) ? hold.text().title() : null);
		this.log.add(entry);
		return new Logged(entry, remarks);
	}

	private static String remark(CareTask hold, Work work) {
		String otherwise = hold.text().otherwise();
		return "It is kept, and marked: “%s” asks for no %s from %s. %s".formatted(hold.text().title(), work.words(),
				DayWords.of(hold.window()), (otherwise != null) ? otherwise : hold.text().why());
	}

	private static String oneLine(String note) {
		String line = note.replaceAll("\\s+", " ").strip();
		return (line.length() <= WATERING_NOTE) ? line : line.substring(0, WATERING_NOTE - 1) + "…";
	}

	/** Takes an entry back in the caller's transaction. */
	void takeBack(LogEntry entry) {
		this.log.undo(entry.id(), this.turn.now());
		if (entry.work() == Work.WATER) {
			this.waterings.removeIfThere(entry.site(), new WateringId(entry.id().value()));
		}
	}

}
