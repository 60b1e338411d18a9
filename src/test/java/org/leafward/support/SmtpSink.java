package org.leafward.support;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;

/**
 * A mail server (RFC 5321) that takes everything, on as many connections as come, and
 * remembers how often each Message-ID came.
 */
public final class SmtpSink implements AutoCloseable {

	private static final String ID = "\nmessage-id:";

	private final Map<String, Integer> received = new ConcurrentHashMap<>();

	private final AtomicLong messages = new AtomicLong();

	private final ServerSocket socket;

	private final long pauseMillis;

	/**
	 * Opens a server.
	 * @param port where; 0 for any
	 * @param pauseMillis how long it takes to take a message, milliseconds
	 * @throws IOException when the port is taken
	 */
	public SmtpSink(int port, long pauseMillis) throws IOException {
		this.socket = new ServerSocket(port, 200, InetAddress.getLoopbackAddress());
		this.pauseMillis = pauseMillis;
		daemon(this::serve);
	}

	/**
	 * A server of its own process, which prints every second how much came.
	 * @param args port
	 */
	public static void main(String[] args) throws Exception {
		try (SmtpSink sink = new SmtpSink(Integer.parseInt(args[0]), 0)) {
			while (true) {
				Thread.sleep(1_000);
				System.out.println(sink.messages());
			}
		}
	}

	public int port() {
		return this.socket.getLocalPort();
	}

	/** Messages that came, repeats counted. */
	public long messages() {
		return this.messages.get();
	}

	/** How often each Message-ID came. */
	public Map<String, Integer> received() {
		return Map.copyOf(this.received);
	}

	@Override
	public void close() throws IOException {
		this.socket.close();
	}

	private static void daemon(Runnable work) {
		Thread thread = new Thread(work, "smtp-sink");
		thread.setDaemon(true);
		thread.start();
	}

	private void serve() {
		while (!this.socket.isClosed()) {
			try {
				Socket client = this.socket.accept();
				client.setTcpNoDelay(true);
				daemon(() -> talk(client));
			}
			catch (IOException ex) {
				// closed
			}
		}
	}

	private void talk(Socket client) {
		try (client) {
			InputStream in = new BufferedInputStream(client.getInputStream(), 64 * 1024);
			OutputStream out = client.getOutputStream();
			say(out, "220 sink ready");
			for (String line = line(in); line != null; line = line(in)) {
				String verb = line.substring(0, Math.min(4, line.length())).toUpperCase(Locale.ROOT);
				switch (verb) {
					case "EHLO", "HELO" -> say(out, "250 sink");
					case "DATA" -> {
						say(out, "354 go on");
						take(in);
						say(out, "250 2.0.0 taken");
					}
					case "QUIT" -> {
						say(out, "221 bye");
						return;
					}
					default -> say(out, "250 ok");
				}
			}
		}
		catch (IOException | InterruptedException ex) {
			// The client went away, which is what killed clients do.
		}
	}

	private void take(InputStream in) throws IOException, InterruptedException {
		StringBuilder head = new StringBuilder("\n");
		boolean inHead = true;
		String line = line(in);
		for (; line != null && !line.equals("."); line = line(in)) {
			inHead = inHead && !line.isEmpty();
			if (inHead) {
				head.append(line).append('\n');
			}
		}
		if (line == null) {
			throw new IOException("cut short");
		}
		if (this.pauseMillis > 0) {
			Thread.sleep(this.pauseMillis);
		}
		int at = head.toString().toLowerCase(Locale.ROOT).indexOf(ID);
		String id = head.substring(at + ID.length(), head.indexOf("\n", at + ID.length())).strip();
		this.received.merge(id, 1, Integer::sum);
		this.messages.incrementAndGet();
	}

	private static void say(OutputStream out, String reply) throws IOException {
		out.write((reply + "\r\n").getBytes(StandardCharsets.US_ASCII));
		out.flush();
	}

	/** Null at the end; a message cut short ends its connection. */
	private static String line(InputStream in) throws IOException {
		ByteArrayOutputStream line = new ByteArrayOutputStream(128);
		for (int octet = in.read(); octet >= 0; octet = in.read()) {
			if (octet == '\n') {
				return line.toString(StandardCharsets.UTF_8).stripTrailing();
			}
			line.write(octet);
		}
		return null;
	}

}
