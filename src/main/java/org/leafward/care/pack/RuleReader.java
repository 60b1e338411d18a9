package org.leafward.care.pack;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskText;
import org.leafward.care.core.rule.Anchor;
import org.leafward.care.core.rule.Concern;
import org.leafward.care.core.rule.Grade;
import org.leafward.care.core.rule.Ramp;
import org.leafward.care.core.rule.RampStep;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.Source;
import org.leafward.care.core.rule.Span;
import org.leafward.care.core.rule.Timing;
import org.leafward.care.pack.PackDraft.AnchorDraft;
import org.leafward.care.pack.PackDraft.RampDraft;
import org.leafward.care.pack.PackDraft.RuleDraft;
import org.leafward.care.pack.PackDraft.SourceDraft;

/** Turns rules as written into values, and finds what the schema can't see. */
final class RuleReader {

	private final Complaints complaints;

	private final AnchorReader anchors;

	private final ConcernReader concerns;

	RuleReader(KnownPlants known, Complaints complaints) {
		this.complaints = complaints;
		this.anchors = new AnchorReader(complaints);
		this.concerns = new ConcernReader(known, complaints);
	}

	@Nullable Rule read(RuleDraft draft, String path) {
		TaskKind kind = kind(draft.kind());
		Concern concern = this.concerns.read(draft.concerns(), path + "/concerns");
		Timing timing = (kind == TaskKind.RAMP_DAY) ? ramp(draft, path) : span(draft, path);
		List<Source> sources = sources(draft.sources(), path + "/sources");
		PackDraft.WordsDraft words = draft.text();
		TaskText text = new TaskText(draft.title(), words.what(), words.amount(), words.why(), words.otherwise(),
				words.caution());
		return (timing != null) ? new Rule(draft.id(), kind, concern, timing, text, sources) : null;
	}

	private static TaskKind kind(String code) {
		return switch (code) {
			case "do" -> TaskKind.DO;
			case "hold-off" -> TaskKind.HOLD_OFF;
			case "ramp" -> TaskKind.RAMP_DAY;
			default -> TaskKind.WATCH;
		};
	}

	private @Nullable Timing span(RuleDraft draft, String path) {
		Anchor from = end(draft.from(), path, "from");
		Anchor to = end(draft.to(), path, "to");
		if (draft.ramp() != null) {
			this.complaints.add(path + "/ramp", "only rules of the kind ramp have steps",
					"write kind: ramp, or remove it");
			return null;
		}
		if (from == null || to == null) {
			return null;
		}
		return new Span(from, to, Objects.requireNonNullElse(draft.everyDays(), 0),
				Objects.requireNonNullElse(draft.shortestDays(), 1), Boolean.TRUE.equals(draft.untilPlanted()));
	}

	private @Nullable Anchor end(@Nullable AnchorDraft draft, String path, String name) {
		if (draft == null) {
			this.complaints.add(path, "'%s' is missing".formatted(name),
					"add '%s' with one of: marker, planting-date, day-of-year".formatted(name));
			return null;
		}
		return this.anchors.read(draft, path + "/" + name);
	}

	private @Nullable Timing ramp(RuleDraft draft, String path) {
		AnchorDraft written = (draft.to() != null) ? draft.to() : draft.from();
		RampDraft ramp = draft.ramp();
		boolean sound = true;
		if (ramp == null) {
			this.complaints.add(path, "a ramp needs steps", "add 'ramp' with days and steps");
			sound = false;
		}
		if (written == null || (draft.from() != null && draft.to() != null)) {
			this.complaints.add(path, "a ramp hangs on one end",
					"write 'from' when it begins on the anchor, or 'to' when it ends there, but not both");
			return null;
		}
		for (String entry : spanEntries(draft)) {
			this.complaints.add(path + "/" + entry, "a ramp takes no '%s'".formatted(entry), "remove it");
			sound = false;
		}
		Anchor anchor = this.anchors.read(written, path + ((draft.to() != null) ? "/to" : "/from"));
		if (ramp == null || anchor == null) {
			return null;
		}
		int sum = ramp.steps().stream().mapToInt(PackDraft.StepDraft::days).sum();
		if (sum != ramp.days()) {
			this.complaints.add(path + "/ramp/days",
					"the ramp has %d days, its steps add up to %d".formatted(ramp.days(), sum),
					"change 'days' or the steps so that they agree");
			sound = false;
		}
		List<RampStep> steps = ramp.steps()
			.stream()
			.map((step) -> new RampStep(step.days(), step.place(), step.hours(), step.text()))
			.toList();
		return sound ? new Ramp(anchor, draft.to() != null, steps) : null;
	}

	private static List<String> spanEntries(RuleDraft draft) {
		List<String> entries = new ArrayList<>();
		if (draft.everyDays() != null) {
			entries.add("every-days");
		}
		if (draft.shortestDays() != null) {
			entries.add("shortest-days");
		}
		if (draft.untilPlanted() != null) {
			entries.add("until-planted");
		}
		return entries;
	}

	private List<Source> sources(List<SourceDraft> drafts, String path) {
		List<Source> sources = new ArrayList<>();
		for (int i = 0; i < drafts.size(); i++) {
			SourceDraft draft = drafts.get(i);
			Grade grade = Arrays.stream(Grade.values())
				.filter((one) -> one.code().equals(draft.grade()))
				.findFirst()
				.orElseThrow();
			if (grade == Grade.READ_IN_SOURCE && (draft.publisher() == null || draft.address() == null)) {
				this.complaints.add(path + "/" + i, "a source that was read has a publisher and an address",
						"add them, or lower the grade");
			}
			sources.add(new Source(draft.title(), draft.publisher(), draft.address(), grade));
		}
		return sources;
	}

}
