using FsCheck;
using FsCheck.Fluent;
using PlotAgronomy.Liming;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Tests.Liming;

/// <summary>A method with one of its targets, a reading and a pH inside its domain.</summary>
public sealed record LimeQuestion(LimeMethod Method, double Target, double WaterPh, double Reading)
{
    public LimeNeed Answer() => Ask(Target, Reading);

    public LimeNeed Ask(double target, double reading) => Method.NeedFor(new SoilReport
    {
        Laboratory = "test laboratory",
        WaterPh = PlotAgronomy.WaterPh.FromValue(Method.Buffers.IsEmpty && Method.Reads == "water pH" ? reading : WaterPh),
        BufferPhs = Method.Buffers.IsEmpty ? [] : [BufferPh.FromValue(reading, Method.Buffers[0])],
        ExchangeableAcidity = CationCharge.FromMilliequivalentsPer100Grams(reading),
        Readings = [SoilReading.FromPrinted(SoilAnalyte.Aluminum, reading, SoilTestUnit.PartsPerMillion, Extractant.ModifiedMorgan)],
        SoilClass = Method.Soils[0],
        LimeBufferCapacity = PlotAgronomy.Soil.LimeBufferCapacity.AtEquilibrium(Math.Clamp(reading, 1, 2000)),
    }, target);

    public override string ToString() => $"{Method.Id} to {Target}, pH {WaterPh}, reading {Reading}";
}

/// <summary>Generators of this room.</summary>
public static class LimeArbitraries
{
    public static Arbitrary<LimeQuestion> Questions() => Gen.Elements(LimeMethod.Everything.Where(m => m.Id != "texture-fallback"))
        .SelectMany(m => Gen.Choose(0, 1000), (m, reading) => (m, reading))
        .SelectMany(x => Gen.Choose(0, 1000), (x, target) => (x.m, x.reading, target))
        .SelectMany(x => Gen.Choose(450, 620), (x, ph) =>
        {
            double reading = Math.Round(x.m.LowestReading + ((x.m.HighestReading - x.m.LowestReading) * x.reading / 1000), 4);
            double target = x.m.TargetPhs.IsEmpty ? 5.5 + (x.target / 1000.0) : x.m.TargetPhs[x.target % x.m.TargetPhs.Length];
            return new LimeQuestion(x.m, target, ph / 100.0, reading);
        }).ToArbitrary();

    public static Arbitrary<SieveAnalysis> Sieves() => Gen.Choose(0, 100).ListOf(9)
        .Select(shares => SieveAnalysis.FromPercent([.. shares.OrderDescending().Zip(Meshes, (share, mesh) => (mesh, (double)share))]))
        .ToArbitrary();

    public static Arbitrary<LimeBasis> Bases() => Gen.Elements(LimeBasis.Everything.Where(b => b.Figure is not null)).ToArbitrary();

    internal static readonly int[] Meshes = [4, 8, 10, 20, 30, 40, 50, 60, 100];
}
