package org.leafward.reminders.channel.mail;

import jakarta.mail.Address;
import jakarta.mail.BodyPart;
import jakarta.mail.Flags;
import jakarta.mail.Folder;
import jakarta.mail.Message;
import jakarta.mail.MessagingException;
import jakarta.mail.Multipart;
import jakarta.mail.Part;
import jakarta.mail.Session;
import jakarta.mail.Store;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.search.FlagTerm;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.MailedAnswers;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Service;

/**
 * Reads answers to invitations from a mailbox by IMAP (RFC 9051), if one is set up. A
 * mail is marked as seen once it was looked at, whatever it was, and never deleted: the
 * mailbox is the operator's. Mails come from strangers, so their number, size and depth
 * are bounded, and who they say they are from isn't asked.
 */
@Service
public class AnswerBox {

	/** Mails that are read at a time. */
	static final int MOST_MAILS = 200;

	/** Longest mail that is looked into, octets. */
	static final int LONGEST = 512 * 1024;

	private static final int LONGEST_CALENDAR = 64 * 1024;

	private static final int MOST_PARTS = 20;

	private static final int DEEPEST = 4;

	private static final String TIME_OUT = "15000";

	private static final Logger LOG = LoggerFactory.getLogger(AnswerBox.class);

	private final ObjectProvider<MailedAnswers> takers;

	private final String host;

	private final int port;

	private final boolean tls;

	private final String user;

	private final String password;

	private final String folder;

	AnswerBox(ObjectProvider<MailedAnswers> takers, @Value("${leafward.answers.imap.host:}") String host,
			@Value("${leafward.answers.imap.port:993}") int port,
			@Value("${leafward.answers.imap.tls:true}") boolean tls,
			@Value("${leafward.answers.imap.username:}") String user,
			@Value("${leafward.answers.imap.password:}") String password,
			@Value("${leafward.answers.imap.folder:INBOX}") String folder) {
		this.takers = takers;
		this.host = host.strip();
		this.port = port;
		this.tls = tls;
		this.user = user;
		this.password = password;
		this.folder = folder;
	}

	/**
	 * Reads what is new.
	 * @return how many answers were taken; 0 without a mailbox
	 */
	public int read() {
		if (this.host.isEmpty()) {
			return 0;
		}
		String protocol = this.tls ? "imaps" : "imap";
		Properties settings = new Properties();
		for (String limit : new String[] { "connectiontimeout", "timeout", "writetimeout" }) {
			settings.setProperty("mail.%s.%s".formatted(protocol, limit), TIME_OUT);
		}
		settings.setProperty("mail.%s.ssl.checkserveridentity".formatted(protocol), "true");
		// Parts are asked for by their size, so that a long mail isn't fetched.
		settings.setProperty("mail.%s.partialfetch".formatted(protocol), "true");
		try (Store store = Session.getInstance(settings).getStore(protocol)) {
			store.connect(this.host, this.port, this.user, this.password);
			Folder box = store.getFolder(this.folder);
			box.open(Folder.READ_WRITE);
			try {
				return read(box);
			}
			finally {
				box.close(false);
			}
		}
		catch (MessagingException ex) {
			LOG.warn("the mailbox with answers could not be read: {}", ex.getClass().getSimpleName());
			return 0;
		}
	}

	private int read(Folder box) throws MessagingException {
		Message[] fresh = box.search(new FlagTerm(new Flags(Flags.Flag.SEEN), false));
		int taken = 0;
		for (Message mail : Arrays.copyOf(fresh, Math.min(fresh.length, MOST_MAILS))) {
			taken += (mail.getSize() <= LONGEST && take(mail)) ? 1 : 0;
			mail.setFlag(Flags.Flag.SEEN, true);
		}
		return taken;
	}

	private boolean take(Message mail) {
		try {
			String token = token(mail);
			if (token == null) {
				return false;
			}
			Optional<String> calendar = calendar(mail, 0);
			return calendar.isPresent() && this.takers.stream().anyMatch((taker) -> taker.take(token, calendar.get()));
		}
		catch (MessagingException | IOException | RuntimeException ex) {
			LOG.info("a mail among the answers could not be read: {}", ex.getClass().getSimpleName());
			return false;
		}
	}

	/** What stands behind the plus sign of an address that it was sent to. */
	private static @Nullable String token(Message mail) throws MessagingException {
		String[] delivered = mail.getHeader("Delivered-To");
		for (String one : (delivered != null) ? delivered : new String[0]) {
			String token = token(one);
			if (token != null) {
				return token;
			}
		}
		Address[] to = mail.getAllRecipients();
		for (Address one : (to != null) ? to : new Address[0]) {
			String token = (one instanceof InternetAddress address) ? token(address.getAddress()) : null;
			if (token != null) {
				return token;
			}
		}
		return null;
	}

	private static @Nullable String token(@Nullable String address) {
		int plus = (address != null) ? address.indexOf('+') : -1;
		int at = (address != null) ? address.lastIndexOf('@') : -1;
		return (address != null && plus > 0 && at > plus) ? address.substring(plus + 1, at).strip() : null;
	}

	private static Optional<String> calendar(Part part, int depth) throws MessagingException, IOException {
		String type = part.getContentType().toLowerCase(Locale.ROOT);
		if (type.startsWith("text/calendar") || type.startsWith("application/ics")) {
			try (InputStream in = part.getInputStream()) {
				byte[] octets = in.readNBytes(LONGEST_CALENDAR + 1);
				return (octets.length <= LONGEST_CALENDAR) ? Optional.of(new String(octets, StandardCharsets.UTF_8))
						: Optional.empty();
			}
		}
		if (type.startsWith("multipart/") && depth < DEEPEST && part.getContent() instanceof Multipart parts) {
			for (int i = 0; i < Math.min(parts.getCount(), MOST_PARTS); i++) {
				BodyPart one = parts.getBodyPart(i);
				Optional<String> found = calendar(one, depth + 1);
				if (found.isPresent()) {
					return found;
				}
			}
		}
		return Optional.empty();
	}

}
