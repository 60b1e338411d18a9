package org.leafward.language;

import org.jspecify.annotations.Nullable;

/** Spanish dates, for tests in other packages. */
public final class SpokenDatesFixture {

	private SpokenDatesFixture() {
	}

	public static @Nullable String say(String english) {
		return new SpokenDates(Language.SPANISH.locale()).say(english);
	}

}
