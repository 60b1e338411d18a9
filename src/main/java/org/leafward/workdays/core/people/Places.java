package org.leafward.workdays.core.people;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.leafward.workdays.SignUp;
import org.leafward.workdays.SignUpState;

/**
 * The places of a workday. Who comes first has one; whoever finds it full waits, and gets
 * a place in the order in which they came. Who brings more children than there are places
 * is passed by until there are enough, so that no place stays empty for them.
 */
public final class Places {

	private static final Comparator<SignUp> FIRST_COME = Comparator.comparing(SignUp::since)
		.thenComparing((one) -> one.person().toString());

	private Places() {
	}

	/**
	 * How many places are taken.
	 * @param signUps all of a workday
	 * @return people who come, children included
	 */
	public static int taken(List<SignUp> signUps) {
		return signUps.stream().filter((one) -> one.state() == SignUpState.IN).mapToInt(SignUp::places).sum();
	}

	/**
	 * Who gets a place now.
	 * @param capacity how many there are
	 * @param signUps all of a workday, in any order
	 * @return those who wait and are to come, in the order of their turn
	 */
	public static List<SignUp> movingUp(int capacity, List<SignUp> signUps) {
		int free = capacity - taken(signUps);
		List<SignUp> next = new ArrayList<>();
		for (SignUp one : signUps.stream()
			.filter((each) -> each.state() == SignUpState.WAITING)
			.sorted(FIRST_COME)
			.toList()) {
			if (one.places() <= free) {
				next.add(one);
				free -= one.places();
			}
		}
		return next;
	}

}
