package org.leafward.workdays.core.people;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.PersonId;
import org.leafward.workdays.SignUp;
import org.leafward.workdays.SignUpState;
import org.leafward.workdays.WorkdayId;

import static org.assertj.core.api.Assertions.assertThat;

/** Whose turn it is; the rule is ours. */
class PlacesTests {

	private static final WorkdayId DAY = new WorkdayId(new UUID(0, 1));

	private static SignUp signUp(int who, SignUpState state, int children, int minute) {
		return new SignUp(DAY, new PersonId(new UUID(1, who)), state, children, true,
				Instant.EPOCH.plusSeconds(60L * minute), null);
	}

	@Test
	void whoWaitsLongestIsFirstWhateverTheOrderOfTheList() {
		List<SignUp> all = List.of(signUp(3, SignUpState.WAITING, 0, 9), signUp(2, SignUpState.WAITING, 0, 5),
				signUp(1, SignUpState.IN, 0, 1));
		assertThat(Places.movingUp(2, all)).extracting((one) -> one.person().value().getLeastSignificantBits())
			.containsExactly(2L);
	}

	@Test
	void aFamilyForWhichThereIsNoRoomIsPassedByAndKeepsItsTurn() {
		List<SignUp> all = List.of(signUp(1, SignUpState.IN, 0, 1), signUp(2, SignUpState.WAITING, 2, 2),
				signUp(3, SignUpState.WAITING, 0, 3));
		assertThat(Places.movingUp(2, all)).extracting((one) -> one.person().value().getLeastSignificantBits())
			.containsExactly(3L);
		assertThat(Places.movingUp(4, all)).extracting((one) -> one.person().value().getLeastSignificantBits())
			.containsExactly(2L);
	}

	/** Never more people than places; nobody is passed by who would have fitted. */
	@RepeatedTest(50)
	void placesAreFilledAndNeverOverfilled(RepetitionInfo repetition) {
		Random random = new Random(repetition.getCurrentRepetition());
		int capacity = 1 + random.nextInt(20);
		List<SignUp> all = new ArrayList<>();
		for (int i = 0; i < 30; i++) {
			SignUp one = signUp(i, SignUpState.values()[random.nextInt(3)], random.nextInt(3), random.nextInt(100));
			if (one.state() != SignUpState.IN || Places.taken(all) + one.places() <= capacity) {
				all.add(one);
			}
		}
		List<SignUp> up = Places.movingUp(capacity, all);
		int taken = Places.taken(all) + up.stream().mapToInt(SignUp::places).sum();
		assertThat(taken).isLessThanOrEqualTo(capacity);
		assertThat(all).filteredOn((one) -> one.state() == SignUpState.WAITING && !up.contains(one))
			.allMatch((one) -> one.places() > capacity - taken);
	}

}
