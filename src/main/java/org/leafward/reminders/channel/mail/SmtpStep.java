package org.leafward.reminders.channel.mail;

/** How far a mail got on its way to the mail server (RFC 5321 section 3.3). */
enum SmtpStep {

	/** There is a connection, or will be. */
	CONNECTED,

	/** Who it comes from was told. */
	MAIL,

	/** Who it goes to was told. */
	RCPT,

	/** The server was asked whether it may come. */
	DATA,

	/** Parts of it may have left; without its end it counts as never sent. */
	BODY,

	/**
	 * The last dot may have left; without a word about it nobody knows what came of it.
	 */
	END

}
