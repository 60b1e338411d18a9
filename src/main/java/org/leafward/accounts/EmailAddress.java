package org.leafward.accounts;

import java.util.Locale;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;
import org.leafward.measure.Given;

/** What passes as an e-mail address; the mail server has the last word. */
public final class EmailAddress {

	private static final int LONGEST = 254;

	/** A local part, an at sign, a domain with a dot or a local host. */
	private static final Pattern FORM = Pattern
		.compile("[^\\s\\p{Cntrl}\\p{Cs}@<>\",;:]{1,64}@[A-Za-z0-9-]+(\\.[A-Za-z0-9-]+)*");

	private EmailAddress() {
	}

	/**
	 * Checks an address.
	 * @param field name of the field
	 * @param given what was given
	 * @return the address, stripped
	 * @throws BadInput when it is none
	 */
	public static String read(String field, @Nullable String given) {
		String address = Given.text(field, given);
		if (address.length() > LONGEST || !FORM.matcher(address).matches()) {
			throw new BadInput(
					"'%s' is not an e-mail address".formatted(address.substring(0, Math.min(100, address.length()))),
					field, "write it like ada@example.org");
		}
		return address;
	}

	/**
	 * What addresses are compared by.
	 * @param address an address
	 * @return the same for all ways to write it in capital and small letters
	 */
	public static String key(String address) {
		return address.strip().toLowerCase(Locale.ROOT);
	}

}
