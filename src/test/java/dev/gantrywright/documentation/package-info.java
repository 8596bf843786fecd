/** Holds the pages for readers to the program: links, pictures, commands, generated pages. */
package dev.gantrywright.documentation;
