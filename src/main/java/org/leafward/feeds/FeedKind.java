package org.leafward.feeds;

/** Whose tasks a feed holds. */
public enum FeedKind {

	/** Those of all sites of a person. */
	PERSON,

	/** Those of one site. */
	SITE,

	/** Those of one bed. */
	BED,

	/** Those of the sites that a group looks after, and its workdays. */
	GROUP

}
