package dev.gantrywright.link.pty;

import com.sun.jna.Library;
import com.sun.jna.Memory;
import com.sun.jna.NativeLong;

/** The POSIX calls that a pseudo-terminal needs. */
interface CLibrary extends Library {
  int posix_openpt(int flags);

  int grantpt(int fd);

  int unlockpt(int fd);

  int ptsname_r(int fd, byte[] buffer, NativeLong length);

  int open(String path, int flags);

  int close(int fd);

  NativeLong read(int fd, byte[] buffer, NativeLong count);

  NativeLong write(int fd, byte[] buffer, NativeLong count);

  int poll(Memory descriptors, NativeLong count, int timeoutMillis);

  int tcgetattr(int fd, Memory termios);

  void cfmakeraw(Memory termios);

  int tcsetattr(int fd, int action, Memory termios);
}
