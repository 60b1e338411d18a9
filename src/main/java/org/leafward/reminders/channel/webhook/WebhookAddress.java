package org.leafward.reminders.channel.webhook;

import java.net.URI;
import java.net.URISyntaxException;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;
import org.leafward.measure.Given;

/**
 * What passes as the address of a webhook. Whether a server in the public Internet
 * answers there is seen when it is called. No refusal repeats the address, which may hold
 * a secret.
 */
final class WebhookAddress {

	private static final int LONGEST = 300;

	private static final String FIELD = "address";

	private static final String MEND = "write it like https://example.org/leafward";

	private WebhookAddress() {
	}

	/**
	 * Reads an address.
	 * @param given what was given
	 * @param plain whether http is allowed beside https
	 * @return the address
	 * @throws BadInput when it is none that can be called
	 */
	static URI read(@Nullable String given, boolean plain) {
		String text = Given.text(FIELD, given);
		if (text.length() > LONGEST) {
			throw new BadInput("the address is longer than %d characters".formatted(LONGEST), FIELD,
					"use a shorter one");
		}
		URI address = parse(text);
		String scheme = String.valueOf(address.getScheme());
		if (!scheme.equalsIgnoreCase("https") && !(plain && scheme.equalsIgnoreCase("http"))) {
			throw new BadInput("the address does not begin with https://", FIELD, MEND);
		}
		if (address.getHost() == null || address.getPort() == 0 || address.getPort() > 65_535) {
			throw new BadInput("the address names no server", FIELD, MEND);
		}
		if (address.getRawUserInfo() != null || address.getRawFragment() != null) {
			throw new BadInput("the address has a name or password before its server, or a part behind '#'", FIELD,
					"leave it out; a secret may stand in the path");
		}
		return address;
	}

	private static URI parse(String text) {
		if (!text.chars().allMatch((symbol) -> symbol > ' ' && symbol <= '~')) {
			throw new BadInput("the address has a space or a letter outside ASCII", FIELD,
					"percent-encode its path, and write its server in letters from a to z");
		}
		try {
			return new URI(text);
		}
		catch (URISyntaxException ex) {
			throw new BadInput("the address can't be read", FIELD, MEND);
		}
	}

	/**
	 * What may be shown to everybody who sees a message.
	 * @param address the address
	 * @return scheme, server and port
	 */
	static String server(URI address) {
		return address.getScheme() + "://" + address.getRawAuthority();
	}

}
