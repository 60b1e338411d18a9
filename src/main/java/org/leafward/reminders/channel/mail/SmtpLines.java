package org.leafward.reminders.channel.mail;

import jakarta.mail.Address;
import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.util.StreamProvider;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Properties;
import java.util.concurrent.ConcurrentLinkedDeque;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.eclipse.angus.mail.smtp.SMTPMessage;
import org.eclipse.angus.mail.util.MailStreamProvider;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.mail.javamail.JavaMailSenderImpl;
import org.springframework.stereotype.Component;
import org.springframework.util.function.SingletonSupplier;

/**
 * Connections to the mail server, kept open for the next mail: opening one takes longer
 * than a mail does. Host, port, name, password, encryption and time-outs are those of
 * {@code spring.mail}. A connection carries {@value #MOST_MAILS} mails or lives for a
 * minute, so that a mail server behind several addresses shares the work out.
 */
@Component
class SmtpLines implements DisposableBean {

	static final int MOST_MAILS = 100;

	static final Duration LONGEST = Duration.ofSeconds(60);

	private static final int MOST_LINES = 50;

	private static final long PATIENCE_SECONDS = 60;

	private static final String FALLBACK_TIME_OUT = "30000";

	static {
		// The library looks its own class up anew for each mail otherwise, through all
		// jars.
		if (System.getProperty(StreamProvider.class.getName()) == null) {
			System.setProperty(StreamProvider.class.getName(), MailStreamProvider.class.getName());
		}
	}

	private final SingletonSupplier<JavaMailSenderImpl> sender;

	private final Semaphore free;

	private final Clock clock;

	/**
	 * The one used last comes first, so that the others grow old when there is little to
	 * do.
	 */
	private final ConcurrentLinkedDeque<SmtpLine> idle = new ConcurrentLinkedDeque<>();

	private @Nullable ScheduledExecutorService tidier;

	private boolean closed;

	/**
	 * Creates the pool; connects to nobody yet.
	 * @param senders the settings of the mail server, if there is one
	 * @param most greatest number of connections at a time, 1 to 50
	 * @param clock what time it is
	 */
	SmtpLines(ObjectProvider<JavaMailSenderImpl> senders, @Value("${leafward.mail.connections}") int most,
			Clock clock) {
		if (most < 1 || most > MOST_LINES) {
			throw new IllegalArgumentException(
					"leafward.mail.connections is %d; give 1 to %d".formatted(most, MOST_LINES));
		}
		this.sender = SingletonSupplier.ofNullable(senders::getIfAvailable);
		this.free = new Semaphore(most, true);
		this.clock = clock;
	}

	/**
	 * What mails are made with.
	 * @return null when no mail server is set up
	 */
	@Nullable Session session() {
		JavaMailSenderImpl sender = this.sender.get();
		return (sender != null) ? session(sender) : null;
	}

	/**
	 * The mail server.
	 * @return host and port; empty when none is set up
	 */
	String where() {
		JavaMailSenderImpl sender = this.sender.get();
		if (sender == null) {
			return "";
		}
		return (sender.getPort() > 0) ? "%s:%d".formatted(sender.getHost(), sender.getPort())
				: String.valueOf(sender.getHost());
	}

	/**
	 * Hands a mail on. Waits for a connection for a minute at most; each step after that
	 * is bounded by the time-outs of the mail client.
	 * @param message the mail
	 * @param to who gets it
	 * @return null when the mail server has taken it
	 * @throws IllegalStateException if no mail server is set up
	 */
	@Nullable SmtpTrouble send(SMTPMessage message, Address to) {
		try {
			if (!this.free.tryAcquire(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
				return SmtpTrouble.busy(PATIENCE_SECONDS);
			}
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
			return SmtpTrouble.busy(0);
		}
		try {
			return sendNow(message, to);
		}
		finally {
			this.free.release();
		}
	}

	/**
	 * Opens a connection, signs in, and closes it again.
	 * @return null when that worked
	 */
	@Nullable SmtpTrouble tryOut() {
		try {
			quit(fresh());
			return null;
		}
		catch (MessagingException ex) {
			return SmtpTrouble.unreachable(ex);
		}
	}

	private @Nullable SmtpTrouble sendNow(SMTPMessage message, Address to) {
		SmtpLine kept = kept();
		if (kept != null) {
			SmtpTrouble trouble = sendBy(kept, message, to);
			if (trouble == null || !stale(kept)) {
				return trouble;
			}
		}
		SmtpLine line;
		try {
			line = fresh();
		}
		catch (MessagingException ex) {
			return SmtpTrouble.unreachable(ex);
		}
		return sendBy(line, message, to);
	}

	private @Nullable SmtpTrouble sendBy(SmtpLine line, SMTPMessage message, Address to) {
		boolean whole = false;
		try {
			line.hand(message, to);
			whole = true;
			return null;
		}
		catch (MessagingException ex) {
			SmtpReply refusal = line.refusal();
			// A mail that couldn't be written to its end leaves the server waiting for
			// the rest.
			whole = refusal != null && !refusal.hangsUp();
			return (refusal != null) ? SmtpTrouble.refused(line.step(), refusal) : SmtpTrouble.lost(line.step(), ex);
		}
		finally {
			giveBack(line, whole);
		}
	}

	/**
	 * Whether a kept connection had ended before the mail: then nothing of the mail was
	 * taken, and a new connection is worth a try.
	 */
	private static boolean stale(SmtpLine line) {
		SmtpReply refusal = line.refusal();
		return line.step().compareTo(SmtpStep.BODY) < 0 && (refusal == null || refusal.hangsUp());
	}

	private @Nullable SmtpLine kept() {
		for (SmtpLine line = this.idle.pollFirst(); line != null; line = this.idle.pollFirst()) {
			if (usable(line)) {
				return line;
			}
			quit(line);
		}
		return null;
	}

	private boolean usable(SmtpLine line) {
		Instant now = this.clock.instant();
		return line.open() && line.mails() < MOST_MAILS && now.isBefore(line.openedAt().plus(LONGEST));
	}

	private void giveBack(SmtpLine line, boolean whole) {
		synchronized (this) {
			if (whole && !this.closed && usable(line)) {
				this.idle.addFirst(line);
				tidyLater();
				return;
			}
		}
		quit(line);
	}

	/** Nobody need send for connections to be closed in time. */
	private void tidyLater() {
		if (this.tidier == null) {
			this.tidier = Executors.newSingleThreadScheduledExecutor((work) -> {
				Thread thread = new Thread(work, "mail-connections");
				thread.setDaemon(true);
				return thread;
			});
			this.tidier.scheduleWithFixedDelay(this::tidy, 15, 15, TimeUnit.SECONDS);
		}
	}

	/** Closes the connections that have had their time. */
	void tidy() {
		for (SmtpLine line : this.idle) {
			if (!usable(line) && this.idle.remove(line)) {
				quit(line);
			}
		}
	}

	private SmtpLine fresh() throws MessagingException {
		JavaMailSenderImpl sender = this.sender.get();
		if (sender == null) {
			throw new IllegalStateException("no mail server is set up");
		}
		SmtpLine line = new SmtpLine(session(sender), protocol(sender), this.clock.instant());
		String password = sender.getPassword();
		boolean named = sender.getUsername() != null && !sender.getUsername().isEmpty();
		line.connect(sender.getHost(), sender.getPort(), named ? sender.getUsername() : null,
				(named || (password != null && !password.isEmpty())) ? password : null);
		return line;
	}

	private static Session session(JavaMailSenderImpl sender) {
		Session session = sender.getSession();
		String prefix = "mail." + protocol(sender) + ".";
		Properties properties = session.getProperties();
		for (String limit : new String[] { "connectiontimeout", "timeout", "writetimeout" }) {
			properties.putIfAbsent(prefix + limit, properties.getOrDefault("mail.smtp." + limit, FALLBACK_TIME_OUT));
		}
		// A factory goes before a proxy in this library.
		if (!properties.containsKey(prefix + "socketFactory.class") && !properties.containsKey(prefix + "socks.host")
				&& properties.putIfAbsent(prefix + "socketFactory", new PromptSockets()) == null) {
			// Otherwise each connection that is refused would be tried a second time.
			properties.putIfAbsent(prefix + "socketFactory.fallback", "false");
		}
		return session;
	}

	private static String protocol(JavaMailSenderImpl sender) {
		String protocol = sender.getProtocol();
		return (protocol != null) ? protocol : JavaMailSenderImpl.DEFAULT_PROTOCOL;
	}

	private static void quit(SmtpLine line) {
		try {
			line.close();
		}
		catch (MessagingException ex) {
			// It ends anyway.
		}
	}

	@Override
	public void destroy() {
		synchronized (this) {
			this.closed = true;
			if (this.tidier != null) {
				this.tidier.shutdownNow();
			}
		}
		for (SmtpLine line = this.idle.pollFirst(); line != null; line = this.idle.pollFirst()) {
			quit(line);
		}
	}

}
