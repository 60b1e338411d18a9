package org.leafward.platform.http;

import java.time.Duration;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;
import org.springframework.util.unit.DataSize;

/**
 * Bounds of outgoing calls.
 *
 * @param connectTimeout how long a connection may take
 * @param readTimeout how long the whole answer may take
 * @param maxBody the largest answer that is read, after unpacking
 * @param contact mail or web address that is sent along, so that the other side can
 * complain to somebody; may be empty
 * @param plain whether http is allowed beside https
 * @param privateAddresses whether addresses that people gave may lead to this machine and
 * its neighbours; for trials and tests only
 */
@ConfigurationProperties("leafward.http")
public record HttpSettings(@DefaultValue("5s") Duration connectTimeout, @DefaultValue("20s") Duration readTimeout,
		@DefaultValue("32MB") DataSize maxBody, @DefaultValue("") String contact, @DefaultValue("false") boolean plain,
		@DefaultValue("false") boolean privateAddresses) {

	public HttpSettings {
		if (!contact.chars().allMatch((symbol) -> symbol >= ' ' && symbol <= '~')) {
			throw new IllegalArgumentException(
					"leafward.http.contact may only hold ASCII letters, digits and signs, for example "
							+ "https://example.org/garden or garden@example.org");
		}
	}

	String userAgent() {
		return this.contact.isBlank() ? "Leafward" : "Leafward (" + this.contact.strip() + ")";
	}

}
