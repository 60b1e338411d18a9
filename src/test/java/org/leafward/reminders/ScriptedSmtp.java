package org.leafward.reminders;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import org.jspecify.annotations.Nullable;

/**
 * A mail server that says what it is told to (RFC 5321). Steps are GREETING, EHLO, MAIL,
 * RCPT, DATA and END, the last dot; the rest of a script is a server that takes all.
 */
public final class ScriptedSmtp implements AutoCloseable {

	/** In place of a reply: close the connection without a word. */
	public static final String HANG_UP = "";

	private static final Map<String, String> WILLING = Map.of("GREETING", "220 test ready", "EHLO", "250 test", "MAIL",
			"250 2.1.0 ok", "RCPT", "250 2.1.5 ok", "DATA", "354 go on", "END", "250 2.0.0 taken", "QUIT", "221 bye",
			"RSET", "250 ok");

	private final Map<String, String> script = new ConcurrentHashMap<>(WILLING);

	private final List<String> messages = new CopyOnWriteArrayList<>();

	private final ServerSocket socket;

	private final Thread thread;

	public ScriptedSmtp() throws IOException {
		this.socket = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
		this.thread = new Thread(this::serve, "scripted-smtp");
		this.thread.setDaemon(true);
		this.thread.start();
	}

	public ScriptedSmtp say(String step, String reply) {
		this.script.put(step, reply);
		return this;
	}

	public int port() {
		return this.socket.getLocalPort();
	}

	/** Everything that came between DATA and the last dot, once for each time. */
	public List<String> messages() {
		return this.messages;
	}

	@Override
	public void close() throws Exception {
		this.socket.close();
		this.thread.join();
	}

	private void serve() {
		while (!this.socket.isClosed()) {
			try (Socket client = this.socket.accept()) {
				talk(client);
			}
			catch (IOException ex) {
				if (!this.socket.isClosed()) {
					throw new UncheckedIOException(ex);
				}
			}
		}
	}

	private void talk(Socket client) throws IOException {
		BufferedReader in = new BufferedReader(
				new InputStreamReader(client.getInputStream(), StandardCharsets.ISO_8859_1));
		OutputStream out = client.getOutputStream();
		if (!reply(out, "GREETING")) {
			return;
		}
		String line = in.readLine();
		while (line != null) {
			String step = line.split("[ :]")[0].toUpperCase(Locale.ROOT);
			if (!reply(out, step)) {
				return;
			}
			if (step.equals("DATA") && this.script.get("DATA").startsWith("354")) {
				this.messages.add(data(in));
				if (!reply(out, "END")) {
					return;
				}
			}
			line = step.equals("QUIT") ? null : in.readLine();
		}
	}

	private static String data(BufferedReader in) throws IOException {
		StringBuilder data = new StringBuilder();
		@Nullable String line = in.readLine();
		while (line != null && !line.equals(".")) {
			data.append(line).append("\r\n");
			line = in.readLine();
		}
		return data.toString();
	}

	private boolean reply(OutputStream out, String step) throws IOException {
		String reply = this.script.getOrDefault(step, "502 what?");
		if (reply.equals(HANG_UP)) {
			return false;
		}
		out.write((reply + "\r\n").getBytes(StandardCharsets.US_ASCII));
		out.flush();
		return true;
	}

}
