package org.leafward.feeds;

/** Whose tasks a feed holds. */
public enum FeedKind {

	/** Those of all sites of a person. */
	PERSON,

	/** Those of one site. */
	SITE

}
