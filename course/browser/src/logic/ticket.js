// Who is signed in, kept by a browser window until somebody signs out: the kernel that knew it may
// have gone. Another window, or this one after a sign-out, is let in by nobody's ticket.

/** @typedef {Pick<Storage, "getItem" | "setItem" | "removeItem">} Shelf */
/** @typedef {{ id: string, ticket: string }} Ticket */

/**
 * @param {Shelf} own the window's
 * @param {Shelf} shared of all windows of this browser
 * @param {string} place the workplace
 */
export function ticketBox(own, shared, place) {
  const mine = `twoshaft-signed-in:${place}`;
  const left = `twoshaft-signed-out:${place}`;
  return {
    /**
     * @param {Ticket} me
     * @param {number} [now]
     */
    keep({ id, ticket }, now = Date.now()) {
      own.setItem(mine, JSON.stringify({ id, ticket, at: now }));
    },
    /** @param {number} [now] */
    drop(now = Date.now()) {
      own.removeItem(mine);
      shared.setItem(left, String(now));
    },
    /** @returns {Ticket | null} */
    get() {
      try {
        const found = JSON.parse(own.getItem(mine) ?? "null");
        if (!found || !(found.at > Number(shared.getItem(left) ?? 0))) return null;
        return { id: String(found.id), ticket: String(found.ticket) };
      } catch {
        return null;
      }
    },
  };
}
