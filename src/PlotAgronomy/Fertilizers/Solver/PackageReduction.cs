namespace PlotAgronomy.Fertilizers;

/// <summary>A problem without the products no cheapest plan needs, and the way back.</summary>
internal sealed class PackageReduction
{
    private readonly int originalProducts;
    private readonly int[] kept;

    private PackageReduction(PackageProblem problem, int[] kept, int originalProducts)
    {
        Problem = problem;
        this.kept = kept;
        this.originalProducts = originalProducts;
    }

    internal PackageProblem Problem { get; }

    /// <param name="original">The problem.</param>
    /// <param name="spreadWhole">Every bought package goes on whole; else any part of it may.</param>
    /// <param name="most">Most packages of each product; none given: no limit.</param>
    /// <param name="start">A set whose products are kept whatever replaces them; none given: none.</param>
    internal static PackageReduction Of(
        PackageProblem original,
        bool spreadWhole,
        ReadOnlySpan<int> most = default,
        ReadOnlySpan<int> start = default
    )
    {
        // A limit on one product may make another, dearer one useful: then nothing is left out.
        bool[] dominated = original.Most is null ? Dominance.Dominated(original, spreadWhole, most) : new bool[original.Products];
        for (int product = 0; product < start.Length; product++)
        {
            dominated[product] &= start[product] == 0;
        }

        return Keeping(original, dominated, keep: false);
    }

    /// <summary>Keeps the products marked with <paramref name="keep"/>.</summary>
    internal static PackageReduction Keeping(PackageProblem original, ReadOnlySpan<bool> marks, bool keep = true)
    {
        var kept = new List<int>();
        for (int product = 0; product < original.Products; product++)
        {
            if (marks[product] == keep)
            {
                kept.Add(product);
            }
        }

        var problem = new PackageProblem(original.Nutrients, kept.Count)
        {
            MissWeight = original.MissWeight,
            Most = original.Most is null ? null : [.. kept.Select(product => original.Most[product])],
        };
        original.Need.CopyTo(problem.Need, 0);
        original.Cap.CopyTo(problem.Cap, 0);
        for (int place = 0; place < kept.Count; place++)
        {
            problem.Price[place] = original.Price[kept[place]];
            for (int nutrient = 0; nutrient < original.Nutrients; nutrient++)
            {
                problem[nutrient, place] = original[nutrient, kept[place]];
            }
        }

        return new PackageReduction(problem, [.. kept], original.Products);
    }

    /// <summary>The values of the products kept; none for none.</summary>
    internal T[] Kept<T>(ReadOnlySpan<T> values)
        where T : struct
    {
        var some = new T[values.IsEmpty ? 0 : kept.Length];
        for (int place = 0; place < some.Length; place++)
        {
            some[place] = values[kept[place]];
        }

        return some;
    }

    internal T[] Restore<T>(ReadOnlySpan<T> values)
        where T : struct
    {
        var all = new T[originalProducts];
        for (int place = 0; place < kept.Length; place++)
        {
            all[kept[place]] = values[place];
        }

        return all;
    }
}
