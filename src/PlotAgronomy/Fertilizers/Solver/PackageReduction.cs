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

    internal static PackageReduction Of(PackageProblem original, bool spreadWhole) =>
        Keeping(original, Dominance.Dominated(original, spreadWhole), keep: false);

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
