package org.leafward.workdays;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;

/**
 * How somebody stands to a workday.
 *
 * @param workday which
 * @param person who
 * @param state whether they have a place
 * @param children how many children they bring, 0 to 20
 * @param guardian whether they said that they are the children's guardian, or have their
 * guardians' leave, and stay with them
 * @param since when they signed up, which decides whose turn it is
 * @param minutes how long they worked; null until somebody said
 */
public record SignUp(WorkdayId workday, PersonId person, SignUpState state, int children, boolean guardian,
		Instant since, @Nullable Integer minutes) {

	/**
	 * How many places it takes.
	 * @return 1 and one for each child
	 */
	public int places() {
		return 1 + this.children;
	}

}
