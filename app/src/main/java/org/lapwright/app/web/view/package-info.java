/** What the templates show, worked out to the last word; a template only arranges it. */
package org.lapwright.app.web.view;
