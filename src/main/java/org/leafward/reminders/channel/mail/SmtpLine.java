package org.leafward.reminders.channel.mail;

import jakarta.mail.Address;
import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.URLName;
import java.io.IOException;
import java.io.OutputStream;
import java.time.Instant;
import org.eclipse.angus.mail.smtp.SMTPMessage;
import org.eclipse.angus.mail.smtp.SMTPTransport;
import org.jspecify.annotations.Nullable;

/**
 * A connection to the mail server that knows how far the mail got that it carries, and
 * what was said to it. The library's exceptions tell neither when the server ends the
 * connection right after a reply. One thread at a time.
 */
final class SmtpLine extends SMTPTransport {

	private final Instant openedAt;

	private SmtpStep step = SmtpStep.CONNECTED;

	private @Nullable SmtpReply refusal;

	private int mails;

	/**
	 * Creates a line that is not connected yet.
	 * @param session the settings
	 * @param protocol smtp or smtps
	 * @param openedAt what time it is
	 */
	SmtpLine(Session session, String protocol, Instant openedAt) {
		super(session, new URLName(protocol, null, -1, null, null, null), protocol, protocol.equals("smtps"));
		this.openedAt = openedAt;
	}

	/**
	 * Hands one mail on.
	 * @param message the mail
	 * @param to who gets it
	 * @throws MessagingException when it was not taken; {@link #step()} and
	 * {@link #refusal()} tell more
	 */
	void hand(SMTPMessage message, Address to) throws MessagingException {
		this.step = SmtpStep.CONNECTED;
		this.refusal = null;
		this.mails++;
		sendMessage(message, new Address[] { to });
	}

	/**
	 * How far the last mail got.
	 * @return the step that was begun
	 */
	SmtpStep step() {
		return this.step;
	}

	/**
	 * How the server said no to the last mail.
	 * @return its first refusal; null when there was none
	 */
	@Nullable SmtpReply refusal() {
		return this.refusal;
	}

	Instant openedAt() {
		return this.openedAt;
	}

	int mails() {
		return this.mails;
	}

	/**
	 * Whether nobody has ended the connection as far as we know; asks nobody.
	 * @return true when it may be used again
	 */
	boolean open() {
		try {
			checkConnected();
			return true;
		}
		catch (IllegalStateException ex) {
			return false;
		}
	}

	@Override
	protected void mailFrom() throws MessagingException {
		this.step = SmtpStep.MAIL;
		super.mailFrom();
	}

	@Override
	protected void rcptTo() throws MessagingException {
		this.step = SmtpStep.RCPT;
		super.rcptTo();
	}

	@Override
	protected OutputStream data() throws MessagingException {
		this.step = SmtpStep.DATA;
		OutputStream body = super.data();
		this.step = SmtpStep.BODY;
		return body;
	}

	@Override
	protected OutputStream bdat() throws MessagingException {
		this.step = SmtpStep.BODY;
		return super.bdat();
	}

	@Override
	protected void finishData() throws IOException, MessagingException {
		this.step = SmtpStep.END;
		super.finishData();
	}

	@Override
	protected void finishBdat() throws IOException, MessagingException {
		this.step = SmtpStep.END;
		super.finishBdat();
	}

	@Override
	protected int readServerResponse() throws MessagingException {
		int code = super.readServerResponse();
		// Later replies are about RSET and QUIT.
		if (this.step != SmtpStep.CONNECTED && this.refusal == null && code >= 400 && code < 600) {
			this.refusal = SmtpReply.of(code, getLastServerResponse());
		}
		return code;
	}

}
