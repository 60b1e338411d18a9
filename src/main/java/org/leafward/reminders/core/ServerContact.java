package org.leafward.reminders.core;

import java.util.List;
import java.util.regex.Pattern;

/**
 * Whom a push service may write to about what we send (RFC 8292, section 2.1).
 */
public final class ServerContact {

	private static final Pattern MAIL = Pattern.compile("[^\\s@<>\",;:/]{1,64}@[A-Za-z0-9.-]{1,255}");

	private ServerContact() {
	}

	/**
	 * Chooses a contact.
	 * @param contact mail or web address that the operator gave; may be empty
	 * @param home address of this server
	 * @param sender who the mails come from
	 * @return the first of contact, home and sender that is a mail address or an https
	 * address; some push services refuse others
	 */
	public static String of(String contact, String home, SenderAddress sender) {
		String mail = sender.line().replaceAll("(?s).*<|>.*", "");
		for (String one : List.of(contact.strip(), home.strip())) {
			if (one.startsWith("https://") || one.startsWith("mailto:")) {
				return one;
			}
			if (MAIL.matcher(one).matches()) {
				return "mailto:" + one;
			}
		}
		return "mailto:" + mail.strip();
	}

}
