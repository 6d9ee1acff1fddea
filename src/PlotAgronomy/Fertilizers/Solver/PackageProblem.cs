namespace PlotAgronomy.Fertilizers;

/// <summary>Which packages to buy: what each holds, what each costs, and the pounds of each nutrient wanted on the
/// plot.</summary>
internal sealed class PackageProblem
{
    /// <summary>Packages of one product that are counted; two products of so many still fit a whole number.</summary>
    private const double MostCounted = 1e9;

    private readonly double[] content;

    internal PackageProblem(int nutrients, int products)
    {
        Nutrients = nutrients;
        Products = products;
        content = new double[nutrients * products];
        Price = new double[products];
        Need = new double[nutrients];
        Cap = new double[nutrients];
        Array.Fill(Cap, double.PositiveInfinity);
    }

    internal int Nutrients { get; }

    internal int Products { get; }

    /// <summary>Price of one package of each product.</summary>
    internal double[] Price { get; }

    /// <summary>Least pounds of each nutrient on the plot.</summary>
    internal double[] Need { get; }

    /// <summary>Most pounds of each nutrient on the plot; infinite when there is no cap.</summary>
    internal double[] Cap { get; }

    /// <summary>Cost of falling one pound short of each need; null when every need must be met.</summary>
    internal double[]? MissWeight { get; init; }

    /// <summary>Most packages there are of each product; null when there is no end of any.</summary>
    internal int[]? Most { get; init; }

    /// <summary>Pounds of a nutrient in one package of a product.</summary>
    internal double this[int nutrient, int product]
    {
        get => content[(nutrient * Products) + product];
        set => content[(nutrient * Products) + product] = value;
    }

    /// <summary>The same problem with other limits or prices.</summary>
    internal PackageProblem With(
        ReadOnlySpan<double> need = default,
        ReadOnlySpan<double> cap = default,
        ReadOnlySpan<double> price = default,
        double[]? missWeight = null
    )
    {
        var copy = new PackageProblem(Nutrients, Products) { MissWeight = missWeight, Most = Most };
        content.CopyTo(copy.content, 0);
        (need.IsEmpty ? Need : need).CopyTo(copy.Need);
        (cap.IsEmpty ? Cap : cap).CopyTo(copy.Cap);
        (price.IsEmpty ? Price : price).CopyTo(copy.Price);
        return copy;
    }

    internal double Delivered(int nutrient, ReadOnlySpan<double> packages)
    {
        double pounds = 0;
        for (int product = 0; product < Products; product++)
        {
            pounds += this[nutrient, product] * packages[product];
        }

        return pounds;
    }

    /// <summary>Whether some need takes more packages than can be counted: then nothing is said of what to buy.</summary>
    internal bool IsBeyondCounting
    {
        get
        {
            for (int nutrient = 0; nutrient < Nutrients; nutrient++)
            {
                for (int product = 0; product < Products; product++)
                {
                    if (this[nutrient, product] > 0 && Need[nutrient] / this[nutrient, product] > MostCounted)
                    {
                        return true;
                    }
                }
            }

            return false;
        }
    }

    /// <summary>No plan holds more packages of a product than there are, and no cheapest plan more than would meet every need it
    /// serves alone: taking one away would still meet them, load no cap and cost no more.</summary>
    internal int MostUseful(int product)
    {
        int most = 0;
        for (int nutrient = 0; nutrient < Nutrients; nutrient++)
        {
            if (Need[nutrient] > 0 && this[nutrient, product] > 0)
            {
                most = Math.Max(most, Package.RoundUp(Need[nutrient] / this[nutrient, product]));
            }
        }

        return Most is null ? most : Math.Min(most, Most[product]);
    }

    /// <summary>The plan that weighs out any part of a package: one column a product, in packages.</summary>
    internal LinearProgram AsLinearProgram()
    {
        var program = new LinearProgram(Nutrients, Products + (MissWeight is null ? 0 : Nutrients));
        Price.CopyTo(program.Cost, 0);
        for (int product = 0; Most is not null && product < Products; product++)
        {
            program.ColumnHigh[product] = Most[product] == int.MaxValue ? double.PositiveInfinity : Most[product];
        }

        Fill(program, firstColumn: 0);
        FillMisses(program, Products);
        return program;
    }

    /// <summary>Behind the products stand the pounds each nutrient falls short, when that is allowed.</summary>
    internal void FillMisses(LinearProgram program, int firstColumn)
    {
        for (int nutrient = 0; MissWeight is not null && nutrient < Nutrients; nutrient++)
        {
            program[nutrient, firstColumn + nutrient] = 1;
            program.Cost[firstColumn + nutrient] = MissWeight[nutrient];
            program.ColumnHigh[firstColumn + nutrient] = Need[nutrient];
        }
    }

    internal void Fill(LinearProgram program, int firstColumn)
    {
        for (int nutrient = 0; nutrient < Nutrients; nutrient++)
        {
            program.RowLow[nutrient] = Need[nutrient] > 0 ? Need[nutrient] : double.NegativeInfinity;
            program.RowHigh[nutrient] = Cap[nutrient];
            for (int product = 0; product < Products; product++)
            {
                program[nutrient, firstColumn + product] = this[nutrient, product];
            }
        }
    }
}
