package org.leafward.care.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.leafward.care.TaskKind;
import org.leafward.care.core.rule.Anchor;
import org.leafward.care.core.rule.Variant;
import org.leafward.care.pack.PackDraft.AnchorDraft;
import org.leafward.care.pack.PackDraft.RuleDraft;
import org.leafward.care.pack.PackDraft.VariantDraft;

/** Turns what holds elsewhere, as written, into values. */
final class VariantReader {

	private final Complaints complaints;

	private final AnchorReader anchors;

	private final SourceReader sources;

	VariantReader(Complaints complaints, AnchorReader anchors, SourceReader sources) {
		this.complaints = complaints;
		this.anchors = anchors;
		this.sources = sources;
	}

	List<Variant> read(RuleDraft rule, TaskKind kind, String path) {
		List<Variant> variants = new ArrayList<>();
		List<VariantDraft> drafts = Objects.requireNonNullElse(rule.regions(), List.of());
		for (int i = 0; i < drafts.size(); i++) {
			Variant variant = read(drafts.get(i), path + "/regions/" + i);
			if (variant != null) {
				variants.add(variant);
			}
		}
		return variants;
	}

	private @Nullable Variant read(VariantDraft draft, String path) {
		boolean leaveOut = draft.leaveOut() != null;
		boolean ends = draft.from() != null || draft.to() != null;
		if (leaveOut == ends) {
			this.complaints.add(path, ends ? "a task that is left out has no ends" : "the entry changes nothing",
					"write other ends with 'from' or 'to', or leave-out: true");
			return null;
		}
		Anchor from = end(draft.from(), path + "/from");
		Anchor to = end(draft.to(), path + "/to");
		boolean sound = (from != null) == (draft.from() != null) && (to != null) == (draft.to() != null);
		return sound
				? new Variant(ConcernReader.where(draft.where()), from, to, leaveOut, draft.why(),
						this.sources.read(Objects.requireNonNullElse(draft.sources(), List.of()), path + "/sources"))
				: null;
	}

	private @Nullable Anchor end(@Nullable AnchorDraft draft, String path) {
		return (draft != null) ? this.anchors.read(draft, path) : null;
	}

}
