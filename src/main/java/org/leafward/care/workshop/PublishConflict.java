package org.leafward.care.workshop;

import java.util.List;
import org.leafward.care.PackVersion;
import org.leafward.care.core.diff.LineDiff;

/** Somebody else published the pack in between. Nothing was written. */
public class PublishConflict extends RuntimeException {

	private static final long serialVersionUID = 1L;

	private final transient PackVersion newest;

	private final transient List<LineDiff.Line> changes;

	PublishConflict(int base, PackVersion newest, List<LineDiff.Line> changes) {
		super("%s published version %d of %s in between (“%s”); your change began with version %d"
			.formatted(newest.by(), newest.version(), newest.pack(), newest.note(), base));
		this.newest = newest;
		this.changes = List.copyOf(changes);
	}

	/** The version that is there now. */
	public PackVersion newest() {
		return this.newest;
	}

	/** What differs between the version that the draft began with and the newest. */
	public List<LineDiff.Line> changes() {
		return this.changes;
	}

}
