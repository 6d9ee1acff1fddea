using FsCheck;
using FsCheck.Fluent;
using PlotAgronomy.Blends;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Tests.Blends;

/// <summary>Numbers that spell out a blend: each gives one kind of the table, its share and its tag.</summary>
public sealed class BlendSketch(int[] numbers)
{
    private static readonly CropKind[] Sowable = [.. KindCatalog.Standard.Kinds.Where(k => k.SeedCount is not null && k.Rates?.Drilled is not null)];

    public int[] Numbers => numbers;

    internal (BlendComponent Component, double Share)[] Kinds =>
        [.. numbers.Select((n, i) => (n, i)).DistinctBy(x => (x.n + 7 * x.i) % Sowable.Length).Select(x => (Component(x.n, x.i), (1 + x.n % 40) / 40.0))];

    internal Blend Blend => Blend.FromSharesOfFullStand(Kinds);

    public override string ToString() => string.Join(' ', numbers);

    private static BlendComponent Component(int n, int i) => BlendComponent.FromKind(Sowable[(n + 7 * i) % Sowable.Length], SowingMethod.Drilled) with
    {
        Purity = Fraction.FromPercent(100 - (n * 3 + i) % 60),
        Viability = Fraction.FromPercent(100 - (n * 5 + i) % 50),
    };
}

public static class BlendArbitraries
{
    public static Arbitrary<BlendSketch> Sketches() =>
        ArbMap.Default.ArbFor<NonEmptyArray<PositiveInt>>().Convert(
            a => new BlendSketch([.. a.Get.Take(8).Select(n => n.Get)]),
            s => NonEmptyArray<PositiveInt>.NewNonEmptyArray([.. s.Numbers.Select(n => (PositiveInt)PositiveInt.NewPositiveInt(n))]));
}
