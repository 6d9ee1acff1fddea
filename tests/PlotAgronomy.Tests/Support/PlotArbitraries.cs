using FsCheck;
using FsCheck.Fluent;
using UnitsNet;

namespace PlotAgronomy.Tests.Support;

/// <summary>Generators that every room's properties share. Two-way conversions keep shrinking alive.</summary>
public static class PlotArbitraries
{
    public static Arbitrary<ApplicationRate> Rates() =>
        ArbMap.Default.ArbFor<NonNegativeInt>().Convert(
            n => ApplicationRate.FromPoundsPerAcre(n.Get / 8.0),
            r => (NonNegativeInt)NonNegativeInt.NewNonNegativeInt((int)(r.PoundsPerAcre * 8)));

    public static Arbitrary<Fraction> Fractions() =>
        ArbMap.Default.ArbFor<NonNegativeInt>().Convert(
            n => Fraction.FromValue(n.Get % 1001 / 1000.0),
            f => (NonNegativeInt)NonNegativeInt.NewNonNegativeInt((int)Math.Round(f.Value * 1000, MidpointRounding.AwayFromZero)));

    public static Arbitrary<Area> Areas() =>
        ArbMap.Default.ArbFor<PositiveInt>().Convert(
            n => Area.FromAcres(n.Get / 32.0),
            a => (PositiveInt)PositiveInt.NewPositiveInt(Math.Max(1, (int)(a.Acres * 32))));

    public static Arbitrary<Mass> Masses() =>
        ArbMap.Default.ArbFor<PositiveInt>().Convert(
            n => Mass.FromPounds(n.Get / 16.0),
            m => (PositiveInt)PositiveInt.NewPositiveInt(Math.Max(1, (int)(m.Pounds * 16))));
}
