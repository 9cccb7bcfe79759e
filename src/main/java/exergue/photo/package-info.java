/** Photographs: outlines, caliper diameters, scale bars. Nothing is here yet; its place in the flow is beside check. */
package exergue.photo;
