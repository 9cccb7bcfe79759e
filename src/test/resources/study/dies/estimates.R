# Estimates of the number of dies for invented samples, seeded; writes estimates.csv beside it.
# Run once with R 4.2.2: Rscript estimates.R. The equal-dies figure is solved by uniroot, independently of the program's own bisection.
set.seed(20261125)
rows <- list()
for (k in 1:12) {
  true <- sample(20:200, 1)
  n <- sample(15:260, 1)
  shape <- sample(c(0.7, 1, 2, 50), 1)
  output <- rgamma(true, shape)
  coins <- as.integer(table(sample(seq_len(true), n, replace = TRUE, prob = output)))
  d <- length(coins); d1 <- sum(coins == 1); d2 <- sum(coins == 2)
  C <- 1 - d1 / n
  reach <- 2 / n * sqrt(d1 * (1 - d1 / n) + 2 * d2)
  equal <- uniroot(function(D) D * (1 - (1 - 1 / D)^n) - d, c(d, 1e6), tol = 1e-10)$root
  carter <- if (n < 2 * d) n * d / (1.214 * n - 1.197 * d) else if (n < 3 * d) n * d / (1.124 * n - 1.016 * d) else n * d / (1.069 * n - 0.843 * d)
  f0 <- d1 * (d1 - 1) / (2 * (d2 + 1))
  v <- f0 + d1 * (2 * d1 - 1)^2 / (4 * (d2 + 1)^2) + d1^2 * d2 * (d1 - 1)^2 / (4 * (d2 + 1)^4)
  K <- exp(qnorm(0.975) * sqrt(log(1 + v / f0^2)))
  rows[[k]] <- data.frame(coins = paste(coins, collapse = " "), n, d, d1, d2, coverage = C, lower = max(0, C - reach), upper = min(1, C + reach),
    equal, good = d / C, carter, esty2006 = d / C * (1 + d1 / (2 * d)), esty2011 = n * d / (n - d), chao = d + f0, from = d + f0 / K, to = d + f0 * K)
}
write.csv(format(do.call(rbind, rows), digits = 10, trim = TRUE, scientific = FALSE), "estimates.csv", row.names = FALSE, quote = FALSE)
