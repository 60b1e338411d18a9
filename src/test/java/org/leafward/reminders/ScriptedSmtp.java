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
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;

/**
 * A mail server that says what it is told to (RFC 5321). Steps are GREETING, EHLO, AUTH,
 * MAIL, RCPT, DATA and END, the last dot; the rest of a script is a server that takes
 * all.
 */
public final class ScriptedSmtp implements AutoCloseable {

	/** In place of a reply, or at the end of one: close the connection. */
	public static final String HANG_UP = "(hangs up)";

	private static final Map<String, String> WILLING = Map.of("GREETING", "220 test ready", "EHLO", "250 test", "MAIL",
			"250 2.1.0 ok", "RCPT", "250 2.1.5 ok", "DATA", "354 go on", "END", "250 2.0.0 taken", "QUIT", "221 bye",
			"RSET", "250 ok");

	private final Map<String, String> script = new ConcurrentHashMap<>(WILLING);

	private final List<String> messages = new CopyOnWriteArrayList<>();

	private final List<String> commands = new CopyOnWriteArrayList<>();

	private final Set<Socket> clients = ConcurrentHashMap.newKeySet();

	private final AtomicInteger connections = new AtomicInteger();

	private final AtomicInteger most = new AtomicInteger();

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

	/** Takes back what was said last about a step. */
	public ScriptedSmtp willing(String step) {
		return say(step, WILLING.get(step));
	}

	public int port() {
		return this.socket.getLocalPort();
	}

	/** Everything that came between DATA and the last dot, once for each time. */
	public List<String> messages() {
		return this.messages;
	}

	/** Each line that is a command. */
	public List<String> commands() {
		return this.commands;
	}

	/** How many connections there were so far. */
	public int connections() {
		return this.connections.get();
	}

	/** How many connections there were at one time. */
	public int mostConnections() {
		return this.most.get();
	}

	/** How many connections there are. */
	public int openConnections() {
		return this.clients.size();
	}

	/** Ends all connections without a word, as a server does that starts anew. */
	public void hangUp() throws IOException {
		for (Socket client : this.clients) {
			client.close();
		}
	}

	@Override
	public void close() throws Exception {
		this.socket.close();
		this.thread.join();
		hangUp();
	}

	private void serve() {
		while (!this.socket.isClosed()) {
			try {
				Socket client = this.socket.accept();
				this.clients.add(client);
				this.connections.incrementAndGet();
				this.most.accumulateAndGet(this.clients.size(), Math::max);
				Thread talk = new Thread(() -> talk(client), "scripted-smtp-client");
				talk.setDaemon(true);
				talk.start();
			}
			catch (IOException ex) {
				if (!this.socket.isClosed()) {
					throw new UncheckedIOException(ex);
				}
			}
		}
	}

	private void talk(Socket client) {
		try (client) {
			client.setTcpNoDelay(true);
			converse(client);
		}
		catch (IOException ex) {
			// The client has hung up, or the test has.
		}
		finally {
			this.clients.remove(client);
		}
	}

	private void converse(Socket client) throws IOException {
		BufferedReader in = new BufferedReader(
				new InputStreamReader(client.getInputStream(), StandardCharsets.ISO_8859_1));
		OutputStream out = client.getOutputStream();
		if (!reply(out, "GREETING")) {
			return;
		}
		String line = in.readLine();
		while (line != null) {
			this.commands.add(line);
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
		boolean stays = !reply.endsWith(HANG_UP);
		String words = stays ? reply : reply.substring(0, reply.length() - HANG_UP.length());
		if (!words.isEmpty()) {
			out.write((words + "\r\n").getBytes(StandardCharsets.US_ASCII));
			out.flush();
		}
		return stays;
	}

}
