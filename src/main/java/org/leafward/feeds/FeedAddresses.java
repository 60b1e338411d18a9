package org.leafward.feeds;

import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;

/** The addresses of feeds as calendar programs want them. */
@Component
public class FeedAddresses {

	private final String base;

	FeedAddresses(@Value("${leafward.base-url:}") String base) {
		this.base = base.strip().replaceFirst("/+$", "");
	}

	/**
	 * An address of this server.
	 * @param path below the server's own, begins with a slash
	 * @return absolute, on the server's public address, else on the one that was asked
	 */
	public String absolute(String path) {
		return (this.base.isEmpty() ? ServletUriComponentsBuilder.fromCurrentContextPath().build().toUriString()
				: this.base) + path;
	}

	/**
	 * The address to copy.
	 * @param feed a feed just made
	 * @return absolute, on the server's public address, else on the one that was asked
	 */
	public String address(NewFeed feed) {
		return absolute(feed.path(FeedForm.EVENTS));
	}

	/**
	 * The address of its to-dos.
	 * @param feed a feed just made
	 * @return absolute
	 */
	public String todos(NewFeed feed) {
		return absolute(feed.path(FeedForm.TODOS));
	}

	/**
	 * The same for programs that open such links.
	 * @param feed a feed just made
	 * @return with the scheme webcal
	 */
	public String webcal(NewFeed feed) {
		return address(feed).replaceFirst("^https?:", "webcal:");
	}

}
