package org.leafward.advisories.desk;

import java.net.URI;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.core.env.Environment;
import org.springframework.core.env.Profiles;
import org.springframework.stereotype.Component;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;

/** What the operator set for advisories, and the addresses that stand in them. */
@Component
public class AdvisorySettings {

	private final String base;

	private final String sender;

	private final String senderName;

	private final String contact;

	private final boolean twoPeople;

	private final boolean demo;

	AdvisorySettings(@Value("${leafward.base-url:}") String base,
			@Value("${leafward.advisories.sender:}") String sender,
			@Value("${leafward.advisories.sender-name:}") String senderName,
			@Value("${leafward.advisories.contact:}") String contact,
			@Value("${leafward.advisories.two-people:false}") boolean twoPeople, Environment environment) {
		this.base = base.strip().replaceFirst("/+$", "");
		this.sender = sender.strip();
		this.senderName = senderName.strip();
		this.contact = contact.strip();
		this.twoPeople = twoPeople;
		this.demo = environment.acceptsProfiles(Profiles.of("demo"));
		if (!this.sender.isEmpty() && !this.sender.matches("[^\\s,<&]+")) {
			throw new IllegalStateException(
					"leafward.advisories.sender is '%s': it may hold no space, comma, < or & (CAP 1.2, section 3.2.1)"
						.formatted(this.sender));
		}
	}

	/**
	 * An address of this server.
	 * @param path from the root
	 * @return absolute
	 */
	public URI absolute(String path) {
		if (!this.base.isEmpty()) {
			return URI.create(this.base + path);
		}
		return (RequestContextHolder.getRequestAttributes() != null)
				? URI.create(ServletUriComponentsBuilder.fromCurrentContextPath().build().toUriString() + path)
				: URI.create("http://localhost" + path);
	}

	/**
	 * Who sends, as it stands in the messages; it has to stay the same.
	 * @return as set, else made of the server's name
	 */
	public String sender() {
		return this.sender.isEmpty() ? "advisories@" + absolute("/").getHost() : this.sender;
	}

	/**
	 * Who sends, for readers.
	 * @return never empty
	 */
	public String senderName() {
		return this.senderName.isEmpty() ? "Leafward at " + absolute("/").getHost() : this.senderName;
	}

	/**
	 * Whom to ask.
	 * @return null when nobody is named
	 */
	public @Nullable String contact() {
		return this.contact.isEmpty() ? null : this.contact;
	}

	/**
	 * Whether a second person has to look at each message before it is sent.
	 * @return false unless set
	 */
	public boolean twoPeople() {
		return this.twoPeople;
	}

	/**
	 * Whether the server shows an invented region, whose messages mustn't be taken for
	 * meant ones.
	 * @return true in the demo
	 */
	public boolean invented() {
		return this.demo;
	}

}
