using System.Globalization;

namespace PlotAgronomy.Seeds;

/// <summary>A germination test: normal seedlings of so many seeds.</summary>
/// <remarks>400 seeds is the standard size; ten decide nothing.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class GerminationTest
{
    private GerminationTest(int germinated, int seeds)
    {
        Germinated = germinated;
        Seeds = seeds;
        var (low, high) = SeedMath.Exact(germinated, seeds);
        Low = Fraction.FromValue(low);
        High = Fraction.FromValue(high);
        var (wilsonLow, wilsonHigh) = SeedMath.Wilson(Germination.Value, seeds);
        WilsonLow = Fraction.FromValue(wilsonLow);
        WilsonHigh = Fraction.FromValue(wilsonHigh);
    }

    /// <summary>Gets the normal seedlings.</summary>
    public int Germinated { get; }

    /// <summary>Gets the seeds laid out.</summary>
    public int Seeds { get; }

    /// <summary>Gets the germination found.</summary>
    public Fraction Germination => Fraction.FromValue((double)Germinated / Seeds);

    /// <summary>Gets the standard error as a part of one: sqrt(q (1 - q) / n).</summary>
    public double StandardError => SeedMath.StandardError(Germination.Value, Seeds);

    /// <summary>Gets the lower end of the exact (Clopper-Pearson) 95 % range of the true germination.</summary>
    public Fraction Low { get; }

    /// <summary>Gets the upper end of the exact 95 % range.</summary>
    public Fraction High { get; }

    /// <summary>Gets the lower end of Wilson's 95 % range.</summary>
    public Fraction WilsonLow { get; }

    /// <summary>Gets the upper end of Wilson's 95 % range.</summary>
    public Fraction WilsonHigh { get; }

    /// <summary>Records a test.</summary>
    /// <param name="germinated">Normal seedlings; from 0 to <paramref name="seeds"/>.</param>
    /// <param name="seeds">Seeds laid out; at least 1.</param>
    /// <returns>The test.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A count outside its range.</exception>
    public static GerminationTest FromCount(int germinated, int seeds)
    {
        Guard.AtLeast(seeds, 1, "seeds");
        Guard.Between(germinated, 0, seeds, "seeds", nameof(germinated));
        return new(germinated, seeds);
    }

    /// <summary>Text such as <c>80 of 100 (70.8-87.3 %)</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Germinated} of {Seeds} ({Low.Percent:0.0}-{High.Percent:0.0} %)");
}
