/* Makes the n-th system call on files of a folder fail, or kills the process there.
   FAULT_FOLDER where it counts, FAULT_AT which call (from 1; 0 counts only), FAULT_ERRNO the error
   (0 kills), FAULT_LOG a file outside that gets one line for each call counted. A process that lives
   on is given its next fault by opening /next-fault/AT/ERRNO, which is never there. */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <errno.h>
#include <fcntl.h>
#include <limits.h>
#include <stdarg.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/types.h>
#include <unistd.h>

static const char *folder;
static int at;
static int error;
static int log_fd = -1;
static int count;

__attribute__((constructor)) static void start(void) {
  folder = getenv("FAULT_FOLDER");
  at = getenv("FAULT_AT") ? atoi(getenv("FAULT_AT")) : 0;
  error = getenv("FAULT_ERRNO") ? atoi(getenv("FAULT_ERRNO")) : 0;
  const char *log = getenv("FAULT_LOG");
  if (log) log_fd = open(log, O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC, 0600);
}

static int inside(const char *path) {
  return folder && path && strncmp(path, folder, strlen(folder)) == 0;
}

static int is_next(const char *path) {
  int next_at, next_error;
  if (!path || sscanf(path, "/next-fault/%d/%d", &next_at, &next_error) != 2) return 0;
  at = next_at;
  error = next_error;
  count = 0;
  return 1;
}

static const char *of_fd(int fd, char *buffer) {
  char link[64];
  snprintf(link, sizeof link, "/proc/self/fd/%d", fd);
  ssize_t length = readlink(link, buffer, PATH_MAX - 1);
  if (length < 0) return NULL;
  buffer[length] = 0;
  return buffer;
}

static const char *of_name(int dir, const char *name, char *buffer) {
  int held;
  if (!name) return NULL;
  if (sscanf(name, "/proc/self/fd/%d", &held) == 1) return of_fd(held, buffer);
  if (name[0] == '/') return name;
  char base[PATH_MAX];
  const char *found = dir == AT_FDCWD ? getcwd(base, sizeof base) : of_fd(dir, base);
  if (!found) return NULL;
  snprintf(buffer, PATH_MAX, "%.2000s/%.2000s", found, name);
  return buffer;
}

/* Whether this call is the one; it is named in the log. */
static int here(const char *call, const char *path) {
  if (!inside(path)) return 0;
  int n = __atomic_add_fetch(&count, 1, __ATOMIC_SEQ_CST);
  if (log_fd >= 0) {
    char line[PATH_MAX + 64];
    int length = snprintf(line, sizeof line, "%d %s %s\n", n, call, path);
    static ssize_t (*real)(int, const void *, size_t);
    if (!real) real = dlsym(RTLD_NEXT, "write");
    real(log_fd, line, length);
  }
  return n == at;
}

static void die(void) {
  kill(getpid(), SIGKILL);
  for (;;) pause();
}

static int fails(void) {
  if (error == 0) die();
  errno = error;
  return -1;
}

#define REAL(type, name, ...) \
  static type (*real)(__VA_ARGS__); \
  if (!real) real = dlsym(RTLD_NEXT, #name)

/* A write that is killed has got half of it down. */
#define WRITES(name, offset_type) \
  ssize_t name(int fd, const void *bytes, size_t length, offset_type offset) { \
    REAL(ssize_t, name, int, const void *, size_t, offset_type); \
    char buffer[PATH_MAX]; \
    if (here("write", of_fd(fd, buffer))) { \
      if (error == 0) real(fd, bytes, length / 2, offset); \
      return fails(); \
    } \
    return real(fd, bytes, length, offset); \
  }
WRITES(pwrite, off_t)
WRITES(pwrite64, off64_t)

ssize_t write(int fd, const void *bytes, size_t length) {
  REAL(ssize_t, write, int, const void *, size_t);
  char buffer[PATH_MAX];
  if (here("write", of_fd(fd, buffer))) {
    if (error == 0) real(fd, bytes, length / 2);
    return fails();
  }
  return real(fd, bytes, length);
}

#define ON_FD(name) \
  int name(int fd) { \
    REAL(int, name, int); \
    char buffer[PATH_MAX]; \
    return here(#name, of_fd(fd, buffer)) ? fails() : real(fd); \
  }
ON_FD(fsync)
ON_FD(fdatasync)

#define TRUNCATES(name, offset_type) \
  int name(int fd, offset_type length) { \
    REAL(int, name, int, offset_type); \
    char buffer[PATH_MAX]; \
    return here(#name, of_fd(fd, buffer)) ? fails() : real(fd, length); \
  }
TRUNCATES(ftruncate, off_t)
TRUNCATES(ftruncate64, off64_t)

int rename(const char *from, const char *to) {
  REAL(int, rename, const char *, const char *);
  char buffer[PATH_MAX];
  return here("rename", of_name(AT_FDCWD, to, buffer)) ? fails() : real(from, to);
}

int renameat(int from_dir, const char *from, int to_dir, const char *to) {
  REAL(int, renameat, int, const char *, int, const char *);
  char buffer[PATH_MAX];
  return here("rename", of_name(to_dir, to, buffer)) ? fails() : real(from_dir, from, to_dir, to);
}

int link(const char *from, const char *to) {
  REAL(int, link, const char *, const char *);
  char buffer[PATH_MAX];
  return here("link", of_name(AT_FDCWD, to, buffer)) ? fails() : real(from, to);
}

int unlink(const char *name) {
  REAL(int, unlink, const char *);
  char buffer[PATH_MAX];
  return here("unlink", of_name(AT_FDCWD, name, buffer)) ? fails() : real(name);
}

int unlinkat(int dir, const char *name, int flags) {
  REAL(int, unlinkat, int, const char *, int);
  char buffer[PATH_MAX];
  return here("unlink", of_name(dir, name, buffer)) ? fails() : real(dir, name, flags);
}

int rmdir(const char *name) {
  REAL(int, rmdir, const char *);
  char buffer[PATH_MAX];
  return here("rmdir", of_name(AT_FDCWD, name, buffer)) ? fails() : real(name);
}

int symlink(const char *target, const char *name) {
  REAL(int, symlink, const char *, const char *);
  char buffer[PATH_MAX];
  return here("symlink", of_name(AT_FDCWD, name, buffer)) ? fails() : real(target, name);
}

int chmod(const char *name, mode_t mode) {
  REAL(int, chmod, const char *, mode_t);
  char buffer[PATH_MAX];
  return here("chmod", of_name(AT_FDCWD, name, buffer)) ? fails() : real(name, mode);
}

int futimens(int fd, const struct timespec times[2]) {
  REAL(int, futimens, int, const struct timespec *);
  char buffer[PATH_MAX];
  return here("utimens", of_fd(fd, buffer)) ? fails() : real(fd, times);
}

int utimensat(int dir, const char *name, const struct timespec times[2], int flags) {
  REAL(int, utimensat, int, const char *, const struct timespec *, int);
  char buffer[PATH_MAX];
  return here("utimens", of_name(dir, name, buffer)) ? fails() : real(dir, name, times, flags);
}

#define SENDS(name, offset_type) \
  ssize_t name(int to, int from, offset_type *offset, size_t length) { \
    REAL(ssize_t, name, int, int, offset_type *, size_t); \
    char buffer[PATH_MAX]; \
    return here("write", of_fd(to, buffer)) ? fails() : real(to, from, offset, length); \
  }
SENDS(sendfile, off_t)
SENDS(sendfile64, off64_t)

int mkdir(const char *name, mode_t mode) {
  REAL(int, mkdir, const char *, mode_t);
  char buffer[PATH_MAX];
  return here("mkdir", of_name(AT_FDCWD, name, buffer)) ? fails() : real(name, mode);
}

int fchmod(int fd, mode_t mode) {
  REAL(int, fchmod, int, mode_t);
  char buffer[PATH_MAX];
  return here("fchmod", of_fd(fd, buffer)) ? fails() : real(fd, mode);
}

int chown(const char *name, uid_t user, gid_t group) {
  REAL(int, chown, const char *, uid_t, gid_t);
  char buffer[PATH_MAX];
  return here("chown", of_name(AT_FDCWD, name, buffer)) ? fails() : real(name, user, group);
}

int fchown(int fd, uid_t user, gid_t group) {
  REAL(int, fchown, int, uid_t, gid_t);
  char buffer[PATH_MAX];
  return here("fchown", of_fd(fd, buffer)) ? fails() : real(fd, user, group);
}

#define OPENS(name) \
  int name(const char *path, int flags, ...) { \
    REAL(int, name, const char *, int, ...); \
    va_list more; \
    va_start(more, flags); \
    mode_t mode = flags & O_CREAT ? va_arg(more, mode_t) : 0; \
    va_end(more); \
    char buffer[PATH_MAX]; \
    if (is_next(path)) { \
      errno = ENOENT; \
      return -1; \
    } \
    if ((flags & O_CREAT) && here("create", of_name(AT_FDCWD, path, buffer))) return fails(); \
    return real(path, flags, mode); \
  }
OPENS(open)
OPENS(open64)

#define OPENS_AT(name) \
  int name(int dir, const char *path, int flags, ...) { \
    REAL(int, name, int, const char *, int, ...); \
    va_list more; \
    va_start(more, flags); \
    mode_t mode = flags & O_CREAT ? va_arg(more, mode_t) : 0; \
    va_end(more); \
    char buffer[PATH_MAX]; \
    if ((flags & O_CREAT) && here("create", of_name(dir, path, buffer))) return fails(); \
    return real(dir, path, flags, mode); \
  }
OPENS_AT(openat)
OPENS_AT(openat64)
