package org.leafward.care.core.plan;

import org.jspecify.annotations.Nullable;
import org.leafward.care.TaskId;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskText;
import org.leafward.care.core.rule.Work;
import org.leafward.measure.DayWindow;
import org.leafward.measure.Explanation;
import org.leafward.register.PlantingId;

/**
 * A task as the rules, the site's dates and the weather want it. Never changes; its
 * identifier and its explanation are made when they are first asked for, since most
 * derivations change nothing and need neither.
 */
public final class PlannedTask {

	private final Subject subject;

	private final Draft draft;

	private final int occurrence;

	private final DayWindow window;

	private final Call call;

	private final @Nullable String because;

	private final Told told;

	private @Nullable TaskId id;

	PlannedTask(Subject subject, Draft draft, int occurrence, DayWindow window, Told told, Call call,
			@Nullable String because) {
		this.subject = subject;
		this.draft = draft;
		this.occurrence = occurrence;
		this.window = window;
		this.told = told;
		this.call = call;
		this.because = because;
	}

	/**
	 * What a reader is told.
	 *
	 * @param wording the words
	 * @param reason how the days and the amount came about
	 * @param number stands for what of the two the draft doesn't decide; 0 for nothing
	 * @param rampStep of a day of a ramp of light, which step it tells
	 * @param rampHeld of such a day, whether the plants stay in
	 */
	record Told(Wording wording, Lazy<Explanation> reason, long number, @Nullable Integer rampStep,
			@Nullable Boolean rampHeld) {

		Told(Wording wording, Lazy<Explanation> reason, long number) {
			this(wording, reason, number, null, null);
		}

	}

	/** Whether the weather lets a task stand. */
	public enum Call {

		/** The task is wanted. */
		WANTED,

		/** The weather makes it needless for now; one that stands is withdrawn. */
		NEEDLESS,

		/** The weather isn't known; what stands stays, and nothing new comes. */
		UNKNOWN

	}

	/**
	 * The deterministic identifier.
	 * @return the same for the same subject, rule, season and occurrence
	 */
	public TaskId id() {
		TaskId known = this.id;
		if (known == null) {
			known = TaskIdentity.of(this.subject.id(), rule(), season(), this.occurrence);
			this.id = known;
		}
		return known;
	}

	public Subject subject() {
		return this.subject;
	}

	/**
	 * The planting that it is for.
	 * @return null when it is for the site as a whole
	 */
	public @Nullable PlantingId planting() {
		return this.subject.plantingId();
	}

	/**
	 * What readers call the subject.
	 * @return for example "hedge by the gate (common boxwood)"
	 */
	public String plant() {
		return this.subject.words();
	}

	/**
	 * The rule that it comes from.
	 * @return {@code pack/rule}
	 */
	public String rule() {
		return this.draft.rule().reference();
	}

	/**
	 * The version of the pack in which the rule last changed.
	 * @return 1 or more
	 */
	public int packVersion() {
		return this.draft.rule().pack().versionOf(this.draft.rule().rule());
	}

	public int season() {
		return this.draft.season().year();
	}

	/**
	 * Which of several.
	 * @return 0 for a single window, the day of the year for a single day that the
	 * weather picked, else counted from 1
	 */
	public int occurrence() {
		return this.occurrence;
	}

	public TaskKind kind() {
		return this.draft.rule().rule().kind();
	}

	public Work work() {
		return this.draft.rule().rule().work();
	}

	public DayWindow window() {
		return this.window;
	}

	public Wording wording() {
		return this.told.wording();
	}

	public TaskText text() {
		return this.told.wording().text();
	}

	/**
	 * How the days came about.
	 * @return always the same
	 */
	public Explanation explanation() {
		return this.told.reason().get();
	}

	/**
	 * The step that a day of a ramp of light tells.
	 * @return from 1; null for other tasks
	 */
	public @Nullable Integer rampStep() {
		return this.told.rampStep();
	}

	/**
	 * Whether such a day tells to keep the plants in.
	 * @return null for other tasks
	 */
	public @Nullable Boolean rampHeld() {
		return this.told.rampHeld();
	}

	public Call call() {
		return this.call;
	}

	/**
	 * Why the weather makes it needless.
	 * @return a sentence for readers; null unless it does
	 */
	public @Nullable String because() {
		return this.because;
	}

	/** A number that changes when the words, the kind or the explanation would. */
	long basis() {
		return (this.told.number() != 0) ? Basis.mix(this.draft.basis(), this.told.number()) : this.draft.basis();
	}

}
