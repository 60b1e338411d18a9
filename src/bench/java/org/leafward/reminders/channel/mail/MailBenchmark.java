package org.leafward.reminders.channel.mail;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.leafward.reminders.Message;
import org.leafward.reminders.MessageText;
import org.leafward.reminders.SenderFixture;
import org.leafward.reminders.Series;
import org.leafward.reminders.channel.Delivery.Outcome;
import org.postgresql.ds.PGSimpleDataSource;

/**
 * Mails a second to a mail server on the same machine that throws them away, of 3 kB text
 * and 10 kB HTML. Arguments: mails (20000), threads (4), connections (4).
 */
public final class MailBenchmark {

	private static final PrintStream OUT = System.out;

	private MailBenchmark() {
	}

	public static void main(String[] arguments) throws Exception {
		int mails = (arguments.length > 0) ? Integer.parseInt(arguments[0]) : 20_000;
		int threads = (arguments.length > 1) ? Integer.parseInt(arguments[1]) : 4;
		int connections = (arguments.length > 2) ? Integer.parseInt(arguments[2]) : 4;
		try (Sink sink = new Sink()) {
			SmtpLines lines = new SmtpLines(SenderFixture.to(sink.port()), connections, Clock.systemUTC());
			// Nothing is refused, so no table is asked.
			MailChannel channel = MailChannels.channel(lines, new PGSimpleDataSource(), MailChannels.PLAIN,
					"https://plants.example.org");
			ExecutorService pool = Executors.newFixedThreadPool(threads);
			for (int round = 1; round <= 3; round++) {
				int before = sink.mails.get();
				long start = System.nanoTime();
				send(channel, pool, mails, threads);
				double seconds = (System.nanoTime() - start) / 1e9;
				OUT.printf(Locale.ROOT, "round %d: %d mails in %.1f s, %.0f a second, %d connections so far%n", round,
						sink.mails.get() - before, seconds, mails / seconds, sink.connections.get());
			}
			pool.shutdown();
			lines.destroy();
		}
	}

	private static void send(MailChannel channel, ExecutorService pool, int mails, int threads) throws Exception {
		String text = "Water deeply before the ground freezes: hedge by the gate (boj común).\n".repeat(42);
		String html = "<p>Water deeply before the ground freezes: hedge by the gate (boj común).</p>\n".repeat(130);
		MessageText words = new MessageText("Thu 12 Nov: 12 tasks, first Water deeply", text, html, "", "/", "{}");
		AtomicInteger next = new AtomicInteger();
		List<Future<?>> all = new ArrayList<>();
		for (int thread = 0; thread < threads; thread++) {
			all.add(pool.submit(() -> {
				for (int number = next.getAndIncrement(); number < mails; number = next.getAndIncrement()) {
					Message mail = MailChannels.mail("m" + number, "ada@example.org", "Ada", words, Series.MORNING, null, 0);
					if (channel.deliver(mail).outcome() != Outcome.TAKEN) {
						throw new IllegalStateException("a mail was not taken");
					}
				}
			}));
		}
		for (Future<?> one : all) {
			one.get();
		}
	}

	/** A mail server that takes everything and looks at nothing (RFC 5321). */
	private static final class Sink implements AutoCloseable {

		private static final byte[] END = "\r\n.\r\n".getBytes(StandardCharsets.US_ASCII);

		private final ServerSocket socket = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());

		private final AtomicInteger connections = new AtomicInteger();

		private final AtomicInteger mails = new AtomicInteger();

		Sink() throws IOException {
			start(() -> {
				while (!this.socket.isClosed()) {
					Socket client = this.socket.accept();
					this.connections.incrementAndGet();
					start(() -> converse(client));
				}
			});
		}

		int port() {
			return this.socket.getLocalPort();
		}

		@Override
		public void close() throws IOException {
			this.socket.close();
		}

		private void converse(Socket client) throws IOException {
			client.setTcpNoDelay(true);
			InputStream in = new BufferedInputStream(client.getInputStream(), 65_536);
			OutputStream out = client.getOutputStream();
			say(out, "220 sink");
			for (String line = line(in); !line.isEmpty(); line = line(in)) {
				if (line.startsWith("DATA")) {
					say(out, "354 go on");
					skip(in);
					this.mails.incrementAndGet();
				}
				say(out, line.startsWith("QUIT") ? "221 bye" : "250 ok");
				if (line.startsWith("QUIT")) {
					client.close();
					return;
				}
			}
		}

		private static String line(InputStream in) throws IOException {
			StringBuilder line = new StringBuilder();
			for (int octet = in.read(); octet >= 0 && octet != '\n'; octet = in.read()) {
				line.append((char) octet);
			}
			return line.toString();
		}

		private static void skip(InputStream in) throws IOException {
			int matched = 0;
			while (matched < END.length) {
				int octet = in.read();
				if (octet < 0) {
					throw new IOException("no end");
				}
				matched = (octet == END[matched]) ? matched + 1 : (octet == '\r') ? 1 : 0;
			}
		}

		private static void say(OutputStream out, String line) throws IOException {
			out.write((line + "\r\n").getBytes(StandardCharsets.US_ASCII));
			out.flush();
		}

		private static void start(Talk talk) {
			Thread thread = new Thread(() -> {
				try {
					talk.run();
				}
				catch (IOException ex) {
					// The benchmark is over.
				}
			});
			thread.setDaemon(true);
			thread.start();
		}

		/** What a thread does. */
		private interface Talk {

			void run() throws IOException;

		}

	}

}
