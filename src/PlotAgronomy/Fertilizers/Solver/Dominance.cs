namespace PlotAgronomy.Fertilizers;

/// <summary>Products that no cheapest plan needs: another package does the same work for no more money.</summary>
internal static class Dominance
{
    /// <summary>Pairs compared at most: leaving a product in costs time, never the right answer.</summary>
    private const int MostCompared = 4_000_000;

    /// <summary>Marks the products to leave out. Of two that are alike, the later one goes: that breaks the symmetry between
    /// them. A product of which only so many may be bought replaces none.</summary>
    internal static bool[] Dominated(PackageProblem problem, bool spreadWhole, ReadOnlySpan<int> most = default)
    {
        var dominated = Repeated(problem, most);
        if (problem.IsBeyondCounting)
        {
            return dominated;
        }

        int compared = 0;
        for (int product = 0; product < problem.Products; product++)
        {
            dominated[product] |= problem.MostUseful(product) == 0;
            for (int other = 0; other < problem.Products && !dominated[product] && compared < MostCompared; other++)
            {
                compared++;
                dominated[product] =
                    other != product
                    && !dominated[other]
                    && !IsLimited(most, other)
                    && Replaces(problem, other, product, spreadWhole)
                    && (other < product || IsLimited(most, product) || !Replaces(problem, product, other, spreadWhole));
            }
        }

        return dominated;
    }

    private static bool IsLimited(ReadOnlySpan<int> most, int product) => !most.IsEmpty && most[product] != int.MaxValue;

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

    /// <summary>Marks the later ones of products that are alike and unlimited. Found by sorting, so that hundreds of equal offers
    /// cost no comparison of each with each.</summary>
    private static bool[] Repeated(PackageProblem problem, ReadOnlySpan<int> most)
    {
        var repeated = new bool[problem.Products];
        var free = new List<int>();
        for (int product = 0; product < problem.Products; product++)
        {
            if (!IsLimited(most, product))
            {
                free.Add(product);
            }
        }

        free.Sort((one, other) => Compare(problem, one, other) is not 0 and var order ? order : one.CompareTo(other));
        for (int place = 1; place < free.Count; place++)
        {
            repeated[free[place]] = Compare(problem, free[place - 1], free[place]) == 0;
        }

        return repeated;
    }

    /// <summary>The places of the products, of those that are alike no more than so many; those of which only so many are there
    /// stand each for itself.</summary>
    internal static int[] OfEach(PackageProblem problem, int copies)
    {
        var places = new List<int>();
        var free = new List<int>();
        for (int product = 0; product < problem.Products; product++)
        {
            (IsLimited(problem.Most, product) ? places : free).Add(product);
        }

        free.Sort((one, other) => Compare(problem, one, other) is not 0 and var order ? order : one.CompareTo(other));
        for (int place = 0, alike = 0; place < free.Count; place++)
        {
            alike = place > 0 && Compare(problem, free[place - 1], free[place]) == 0 ? alike + 1 : 0;
            if (alike < copies)
            {
                places.Add(free[place]);
            }
        }

        places.Sort();
        return [.. places];
    }

    private static int Compare(PackageProblem problem, int one, int other)
    {
        int order = problem.Price[one].CompareTo(problem.Price[other]);
        for (int nutrient = 0; order == 0 && nutrient < problem.Nutrients; nutrient++)
        {
            order = problem[nutrient, one].CompareTo(problem[nutrient, other]);
        }

        return order;
    }
}
