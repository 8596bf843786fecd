/**
 * Lines over TCP: plain bytes, and RFC 2217 as client and as server.
 *
 * <p>May import: nothing of ours but the line's own types.
 */
package dev.gantrywright.link.remote;
