package org.leafward.reminders.core;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;
import org.leafward.measure.Given;

/**
 * The push service's address for a browser (RFC 8030, section 2). A browser names it, so
 * it is a stranger's address; where it leads is checked when it is called.
 *
 * @param address the address
 */
public record PushEndpoint(URI address) {

	private static final String FIELD = "endpoint";

	private static final int LONGEST = 2000;

	private static final int HTTPS = 443;

	/**
	 * Reads an endpoint.
	 * @param text what the browser gave
	 * @param plain whether http is allowed beside https
	 * @return the endpoint
	 * @throws BadInput if it is no such address
	 */
	public static PushEndpoint of(@Nullable String text, boolean plain) {
		String given = Given.text(FIELD, text);
		if (given.length() > LONGEST) {
			throw new BadInput("the endpoint has more than %d characters".formatted(LONGEST), FIELD,
					"send the one that the browser's subscription gives");
		}
		URI address = address(given);
		String scheme = String.valueOf(address.getScheme()).toLowerCase(Locale.ROOT);
		boolean allowed = scheme.equals("https") || (plain && scheme.equals("http"));
		if (!allowed || address.getHost() == null || address.getRawUserInfo() != null
				|| address.getRawFragment() != null) {
			throw noAddress();
		}
		return new PushEndpoint(address);
	}

	private static URI address(String text) {
		try {
			URI address = new URI(text);
			if (address.toASCIIString().equals(text)) {
				return address;
			}
		}
		catch (URISyntaxException ex) {
			// Falls through to the refusal.
		}
		throw noAddress();
	}

	private static BadInput noAddress() {
		return new BadInput("the endpoint is no https address", FIELD,
				"send the one that the browser's subscription gives");
	}

	/**
	 * Whose the address is, for whom the server signs (RFC 8292, section 2; RFC 6454,
	 * section 6.2).
	 * @return scheme and host in lower case, and the port unless it is the usual one
	 */
	public String origin() {
		String scheme = this.address.getScheme().toLowerCase(Locale.ROOT);
		int port = this.address.getPort();
		boolean usual = port < 0 || port == (scheme.equals("https") ? HTTPS : 80);
		return scheme + "://" + host() + (usual ? "" : ":" + port);
	}

	/**
	 * The push service, for words: the rest of the address is the browser's secret.
	 * @return the host in lower case
	 */
	public String host() {
		return this.address.getHost().toLowerCase(Locale.ROOT);
	}

	@Override
	public String toString() {
		return "PushEndpoint[" + host() + "]";
	}

}
