# Figures against which the program's statistics are tested. Run once, with R 4.2 or later and nothing else:
#   Rscript expected.R > expected.txt
# Samples: Michelson's hundred measurements of the speed of light, 1879 (R's data set "morley"); the examples on R's own help
# pages of wilcox.test (Hollander and Wolfe 1973, 69 f.) and ks.test (Schroeer and Trenkler 1995); the die-axes and twelve sectors
# of check values; and weights invented by a seeded draw, rounded to 0.01 g as coins are weighed.
cat("#", R.version.string, "\n")
say <- function(name, ...) cat(name, format(c(...), digits = 12, scientific = FALSE, trim = TRUE), "\n")

summed <- function(name, x) {
  say(paste0(name, ".sample"), x)
  say(paste0(name, ".mean"), mean(x))
  say(paste0(name, ".sd"), sd(x))
  say(paste0(name, ".se"), sd(x) / sqrt(length(x)))
  say(paste0(name, ".quartiles"), quantile(x, c(.25, .5, .75), type = 8))
  say(paste0(name, ".interval.mean"), t.test(x)$conf.int)
  below <- qbinom(.025, length(x), .5)
  if (below >= 1) say(paste0(name, ".interval.median"), sort(x)[below], sort(x)[length(x) - below + 1])
  d <- density(x, bw = "nrd0", n = 512, cut = 3)
  say(paste0(name, ".bandwidth"), d$bw)
  say(paste0(name, ".peak"), d$x[which.max(d$y)])
  say(paste0(name, ".height"), max(d$y))
  say(paste0(name, ".mad"), mad(x, constant = 1))
}

compared <- function(name, x, y, exact.ranks) {
  say(paste0(name, ".first"), x)
  say(paste0(name, ".second"), y)
  w <- suppressWarnings(wilcox.test(x, y, exact = exact.ranks))
  say(paste0(name, ".u"), w$statistic)
  say(paste0(name, ".u.p"), w$p.value)
  k <- suppressWarnings(ks.test(x, y, exact = length(x) * length(y) <= 10000))
  say(paste0(name, ".d"), k$statistic)
  say(paste0(name, ".d.p"), k$p.value)
}

set.seed(20241125)
drachms <- round(rnorm(43, 4.11, 0.08), 2)
worn <- round(c(rnorm(30, 4.02, 0.11), rnorm(6, 3.70, 0.15)), 2)
many <- round(rnorm(260, 4.05, 0.10), 2)
summed("michelson", morley$Speed)
summed("drachms", drachms)
summed("worn", worn)
summed("seven", c(3.91, 3.95, 4.02, 4.03, 4.10, 4.11, 4.32))
compared("hollander", c(0.80, 0.83, 1.89, 1.04, 1.45, 1.38, 1.91, 1.64, 0.73, 1.46), c(1.15, 0.88, 0.90, 0.74, 1.21), TRUE)
compared("schroeer", c(1, 2, 2, 3, 3), c(1, 2, 3, 3, 4, 5, 6), FALSE)
compared("ties", drachms, worn, FALSE)
compared("large", many, c(drachms, worn), FALSE)
say("fisher.strict", fisher.test(matrix(c(42, 3, 5, 4), 2, byrow = TRUE))$p.value)
say("fisher.even", fisher.test(matrix(c(8, 3, 5, 4), 2, byrow = TRUE))$p.value)

# Percentile bootstrap of the peak, bandwidth kept; 20 000 samples of R's own generator, so only near the program's.
peak <- function(x, bw, from, to) { d <- density(x, bw = bw, n = 512, from = from, to = to); d$x[which.max(d$y)] }
bw <- bw.nrd0(drachms)
peaks <- replicate(20000, peak(sample(drachms, replace = TRUE), bw, min(drachms) - 3 * bw, max(drachms) + 3 * bw))
say("drachms.interval.peak", quantile(peaks, c(.025, .975)))

# Concentration of a von Mises distribution for a resultant length, by solving I1(k) / I0(k) = r.
for (r in c(0.2, 0.4, 0.6, 0.8, 0.9, 0.95)) {
  say(paste0("kappa.", r), uniroot(function(k) besselI(k, 1, TRUE) / besselI(k, 0, TRUE) - r, c(0.001, 100), tol = 1e-10)$root)
}
