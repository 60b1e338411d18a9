package org.leafward.care.web;

import java.util.Locale;

/** Kinds and states as the API writes them. */
final class Kinds {

	private Kinds() {
	}

	static String code(Enum<?> constant) {
		return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

}
