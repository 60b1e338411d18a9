package org.leafward.workdays.core.board;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.workdays.core.plan.CrewDate;
import org.leafward.workdays.core.plan.CrewSite;
import org.leafward.workdays.core.plan.CrewTask;
import org.leafward.workdays.core.plan.HoldOff;
import org.leafward.workdays.core.plan.Unplaced;

/**
 * Where a task may stand when it is alone, and why not elsewhere.
 *
 * @param slots numbers of slots, ascending
 * @param cause what keeps it out on the day that comes nearest; null when there are slots
 * @param day that day; null when no candidate date is in question
 * @param detail what is missing there, or why it is held off; empty where the cause says
 * all
 */
public record Admission(int[] slots, Unplaced.@Nullable Cause cause, @Nullable LocalDate day, String detail) {

	/** What one day says to a task. */
	private record Verdict(Unplaced.@Nullable Cause cause, String detail, List<Integer> slots) {

		static Verdict no(Unplaced.Cause cause, String detail) {
			return new Verdict(cause, detail, List.of());
		}

	}

	static Admission of(CrewTask task, CrewSite site, int kind, List<CrewDate> dates, List<Slot> slots,
			Map<String, Integer> tools) {
		List<Integer> found = new ArrayList<>();
		Unplaced.Cause nearest = null;
		LocalDate day = null;
		String detail = "";
		for (int date = 0; date < dates.size(); date++) {
			CrewDate candidate = dates.get(date);
			if (task.pinned() != null && !candidate.day().equals(task.pinned())) {
				continue;
			}
			int number = date;
			Verdict verdict = judge(task, site, kind, candidate,
					slots.stream().filter((slot) -> slot.date() == number).toList(), tools);
			found.addAll(verdict.slots());
			Unplaced.Cause cause = verdict.cause();
			if (cause != null && (nearest == null || cause.compareTo(nearest) > 0)) {
				nearest = cause;
				day = candidate.day();
				detail = verdict.detail();
			}
		}
		if (!found.isEmpty()) {
			return new Admission(found.stream().mapToInt(Integer::intValue).toArray(), null, null, "");
		}
		if (task.pinned() != null && nearest == null) {
			return new Admission(new int[0], Unplaced.Cause.WISHES, task.pinned(), "");
		}
		return new Admission(new int[0], (nearest != null) ? nearest : Unplaced.Cause.NO_DATE, day, detail);
	}

	private static Verdict judge(CrewTask task, CrewSite site, int kind, CrewDate date, List<Slot> slots,
			Map<String, Integer> tools) {
		if (!task.window().contains(date.day())) {
			return Verdict.no(Unplaced.Cause.NO_DATE, "");
		}
		HoldOff held = task.heldOff(date.day());
		if (held != null) {
			return Verdict.no(Unplaced.Cause.HELD_OFF, held.because());
		}
		if (task.notOn().contains(date.day())) {
			return Verdict.no(Unplaced.Cause.WISHES, "");
		}
		if (site.closed().contains(date.day())) {
			return Verdict.no(Unplaced.Cause.CLOSED, "");
		}
		if (slots.isEmpty()) {
			return Verdict.no(Unplaced.Cause.NO_CREW, "");
		}
		List<Slot> able = slots.stream().filter((slot) -> slot.shared().knows(kind)).toList();
		if (able.isEmpty()) {
			return Verdict.no(Unplaced.Cause.SKILL, missing(task.skills(), slots));
		}
		for (String tool : task.tools().stream().sorted().toList()) {
			if (tools.getOrDefault(tool, 1) < 1) {
				return Verdict.no(Unplaced.Cause.TOOL, tool);
			}
		}
		List<Integer> fits = able.stream()
			.filter((slot) -> task.personMinutes() <= slot.shared().ableFor(kind) * slot.minutes())
			.map(Slot::number)
			.toList();
		int most = able.stream().mapToInt((slot) -> slot.shared().ableFor(kind) * slot.minutes()).max().orElse(0);
		return fits.isEmpty() ? Verdict.no(Unplaced.Cause.TOO_LARGE, String.valueOf(most))
				: new Verdict(null, "", fits);
	}

	/** The skills that nobody has, or all of them when nobody has them together. */
	private static String missing(Set<String> skills, List<Slot> slots) {
		List<String> nobody = skills.stream()
			.filter((skill) -> slots.stream()
				.noneMatch((slot) -> slot.members().stream().anyMatch((one) -> one.skills().contains(skill))))
			.sorted()
			.toList();
		return String.join(" and ", nobody.isEmpty() ? skills.stream().sorted().toList() : nobody);
	}

}
