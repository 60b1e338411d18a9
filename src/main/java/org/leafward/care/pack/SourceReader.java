package org.leafward.care.pack;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.leafward.care.core.rule.Grade;
import org.leafward.care.core.rule.Source;
import org.leafward.care.pack.PackDraft.SourceDraft;

/** Turns sources as written into values. */
final class SourceReader {

	private final Complaints complaints;

	SourceReader(Complaints complaints) {
		this.complaints = complaints;
	}

	List<Source> read(List<SourceDraft> drafts, String path) {
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
