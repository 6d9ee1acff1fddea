using System.Collections.Immutable;

namespace PlotAgronomy.Seeds;

/// <summary>How long ago a lot was tested, held against the limit on its sale.</summary>
/// <remarks>The limit is about the sale, not about planting: old seed may be planted; test it first.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class TestAge
{
    private TestAge(SeedLot lot, TestDateRule rule, TestMonth tested, DateOnly on)
    {
        Lot = lot;
        Rule = rule;
        Tested = tested;
        On = on;
    }

    /// <summary>Gets the lot.</summary>
    public SeedLot Lot { get; }

    /// <summary>Gets the rule: of the state it is sold in, else the federal one for shipment between states.</summary>
    public TestDateRule Rule { get; }

    /// <summary>Gets the month of test.</summary>
    public TestMonth Tested { get; }

    /// <summary>Gets the day on which it is asked.</summary>
    public DateOnly On { get; }

    /// <summary>Gets the last day on which it may be sold under that test.</summary>
    public DateOnly LastDay => Rule.LastDay(Tested);

    /// <summary>Gets a value indicating whether the test is still current.</summary>
    public bool IsCurrent => On <= LastDay;

    /// <summary>Gets the remark on an old test; none while it is current.</summary>
    public ImmutableArray<Finding> Findings => Rule.Check(Tested, On) is { } old ? [old] : [];

    /// <summary>Looks at the test of a lot.</summary>
    /// <param name="lot">Lot, with its month of test.</param>
    /// <param name="state">State in which it is sold; null takes the federal rule.</param>
    /// <param name="day">Day.</param>
    /// <returns>The age.</returns>
    /// <exception cref="ArgumentException">The lot has no month of test.</exception>
    /// <exception cref="KeyNotFoundException">No rule of the state is known.</exception>
    public static TestAge For(SeedLot lot, Place? state, DateOnly day)
    {
        ArgumentNullException.ThrowIfNull(lot);
        return new(
            lot,
            TestDateRule.For(state, lot.Kind),
            lot.TestMonth ?? throw new ArgumentException("The lot has no month of test.", nameof(lot)),
            day
        );
    }

    /// <summary>The age if the lot was tested in another month.</summary>
    internal static TestAge If(SeedLot lot, TestMonth tested, Place? state, DateOnly day) =>
        new(lot, TestDateRule.For(state, lot.Kind), tested, day);

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"tested {Tested}, counts until {LastDay.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)}";
}
