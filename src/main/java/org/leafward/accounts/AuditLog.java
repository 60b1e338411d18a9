package org.leafward.accounts;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Who did what that others have a right to know. Entries are never changed. */
public interface AuditLog {

	/**
	 * Writes something down, as done by whoever is signed in.
	 * @param deed what was done
	 * @param concerns whose it was; null when it was nobody's
	 * @param what of what, up to 300 characters; no name and no place of a person, since
	 * it stays when they go
	 */
	void note(Deed deed, @Nullable PersonId concerns, String what);

	/**
	 * An entry.
	 *
	 * @param at when
	 * @param actor who did it; null for the operator token, and for people who are gone
	 * @param deed what was done
	 * @param concerns whose it was; null for nobody, and for people who are gone
	 * @param what of what
	 */
	record Entry(Instant at, @Nullable PersonId actor, Deed deed, @Nullable PersonId concerns, String what) {
	}

	/**
	 * Everything, newest first.
	 * @param page from 0
	 * @param size 1 to 200
	 * @return never null
	 */
	List<Entry> all(int page, int size);

	/**
	 * What others did that concerned a person, and what they did themselves; newest
	 * first.
	 * @param person who
	 * @param page from 0
	 * @param size 1 to 200
	 * @return never null
	 */
	List<Entry> of(PersonId person, int page, int size);

}
