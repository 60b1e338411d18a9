package org.leafward.register;

import java.text.Normalizer;
import org.leafward.measure.BadInput;
import org.leafward.measure.Given;

/** Checks for the names that people give to things. */
final class Words {

	private Words() {
	}

	/**
	 * One line of text, stripped and in Unicode's composed form.
	 * @param what name of the field
	 * @param text the text
	 * @param least fewest characters
	 * @param most most characters
	 * @return the clean text
	 */
	static String line(String what, String text, int least, int most) {
		String clean = Normalizer.normalize(text.strip(), Normalizer.Form.NFC);
		if (clean.length() < least || clean.length() > most) {
			throw new BadInput(
					"%s has %d characters; %d to %d are allowed".formatted(what, clean.length(), least, most), what,
					(clean.length() > most) ? "shorten it" : "write something");
		}
		return Given.line(what, clean);
	}

}
