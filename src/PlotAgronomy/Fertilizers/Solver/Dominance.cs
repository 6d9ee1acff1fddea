namespace PlotAgronomy.Fertilizers;

/// <summary>Products that no cheapest plan needs: another package does the same work for no more money.</summary>
internal static class Dominance
{
    /// <summary>Marks the products to leave out. Of two that are alike, the later one goes: that breaks the symmetry between
    /// them.</summary>
    internal static bool[] Dominated(PackageProblem problem, bool spreadWhole)
    {
        var dominated = new bool[problem.Products];
        for (int product = 0; product < problem.Products; product++)
        {
            dominated[product] = problem.MostUseful(product) == 0;
            for (int other = 0; other < problem.Products && !dominated[product]; other++)
            {
                dominated[product] =
                    other != product
                    && !dominated[other]
                    && Replaces(problem, other, product, spreadWhole)
                    && (other < product || !Replaces(problem, product, other, spreadWhole));
            }
        }

        return dominated;
    }

    /// <summary>Whether some part of one package of the first (all of it, if spread whole) gives at least what a package of
    /// the second gives where there is a need, and no more where there is a cap, for no more money.</summary>
    private static bool Replaces(PackageProblem problem, int first, int second, bool spreadWhole)
    {
        if (problem.Price[first] > problem.Price[second])
        {
            return false;
        }

        double leastPart = spreadWhole ? 1 : 0,
            mostPart = 1;
        for (int nutrient = 0; nutrient < problem.Nutrients; nutrient++)
        {
            double gives = problem[nutrient, first],
                wanted = problem[nutrient, second];
            if (problem.Need[nutrient] > 0 && wanted > 0)
            {
                leastPart = gives > 0 ? Math.Max(leastPart, wanted / gives) : double.PositiveInfinity;
            }

            if (double.IsFinite(problem.Cap[nutrient]) && gives > 0)
            {
                mostPart = Math.Min(mostPart, wanted / gives);
            }
        }

        return leastPart <= mostPart;
    }
}
