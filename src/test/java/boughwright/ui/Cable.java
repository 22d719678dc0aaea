package boughwright.ui;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** The cable between a tablet and the kiosk, which can be pulled: every connection breaks and no new one is made until it is put in again. */
final class Cable implements AutoCloseable {

    private final int kiosk;
    private final int tablet;
    private final Set<Socket> open = ConcurrentHashMap.newKeySet();
    private volatile ServerSocket listening;

    /** @param kiosk its port on this machine */
    Cable(int kiosk) {
        this.kiosk = kiosk;
        listening = listen(0);
        tablet = listening.getLocalPort();
    }

    /** The port that the tablet is given in place of the kiosk's. */
    int port() {
        return tablet;
    }

    private ServerSocket listen(int port) {
        try {
            ServerSocket socket = new ServerSocket();
            socket.setReuseAddress(true);
            socket.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), port));
            daemon(() -> accept(socket));
            return socket;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void accept(ServerSocket from) {
        while (!from.isClosed()) {
            try {
                Socket there = from.accept();
                Socket here = new Socket(InetAddress.getLoopbackAddress(), kiosk);
                open.add(there);
                open.add(here);
                if (from.isClosed()) {
                    shut(there);
                    shut(here);
                }
                daemon(() -> carry(there, here));
                daemon(() -> carry(here, there));
            } catch (IOException pulled) {
                // Nobody comes through any more, or the kiosk itself is away.
            }
        }
    }

    private void carry(Socket from, Socket to) {
        try (InputStream in = from.getInputStream(); OutputStream out = to.getOutputStream()) {
            in.transferTo(out);
        } catch (IOException broken) {
            // As it is meant.
        } finally {
            shut(from);
            shut(to);
        }
    }

    private void shut(Socket socket) {
        open.remove(socket);
        try {
            // No polite ending: what is under way is lost.
            socket.setSoLinger(true, 0);
            socket.close();
        } catch (IOException gone) {
            // It was closed from the other side.
        }
    }

    private static void daemon(Runnable work) {
        Thread thread = new Thread(work, "cable");
        thread.setDaemon(true);
        thread.start();
    }

    void pull() {
        try {
            listening.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        open.forEach(this::shut);
    }

    void putIn() {
        listening = listen(tablet);
    }

    @Override
    public void close() {
        pull();
    }
}
