package org.leafward.feeds.web;

import org.leafward.feeds.NewFeed;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;

/** The addresses of feeds as calendar programs want them. */
@Component
class FeedAddresses {

	private final String base;

	FeedAddresses(@Value("${leafward.base-url:}") String base) {
		this.base = base.strip().replaceFirst("/+$", "");
	}

	/**
	 * The address to copy.
	 * @param feed a feed just made
	 * @return absolute, on the server's public address, else on the one that was asked
	 */
	String address(NewFeed feed) {
		return (this.base.isEmpty() ? ServletUriComponentsBuilder.fromCurrentContextPath().build().toUriString()
				: this.base) + feed.path();
	}

	/**
	 * The same for programs that open such links.
	 * @param feed a feed just made
	 * @return with the scheme webcal
	 */
	String webcal(NewFeed feed) {
		return address(feed).replaceFirst("^https?:", "webcal:");
	}

}
