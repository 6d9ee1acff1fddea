using System.Collections.Immutable;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Columns;

/// <summary>What a system is asked for every row alike, tried once with readings of no account.</summary>
internal sealed class NeedQuestion
{
    /// <summary>Poor enough and rich enough for what a system says of no single row to be said.</summary>
    private static readonly double[] Tried = [0, 1e6];

    private readonly RecommendationSystem system;
    private readonly SystemRequest request;
    private readonly DomainReading reading;
    private readonly ReadingSteps steps;
    private readonly NeedRowFlags flags;

    /// <summary>Exchange capacity of all rows; NaN where each row has its own.</summary>
    private readonly double capacity;

    internal NeedQuestion(
        RecommendationSystem system,
        PlantNutrient nutrient,
        CropUse crop,
        SoilReading printed,
        PlotSoil soil
    )
    {
        this.system = system;
        Nutrient = nutrient;
        capacity = soil.CapacityPer100Grams ?? double.NaN;
        var known = double.IsNaN(capacity) ? soil with { ExchangeCapacity = default(CationCharge) } : soil;
        request = new(system.Record, known.ReportedBy(With(Tried[0])), crop);
        var answers = Array.ConvertAll(Tried, value => system.Recommend(known.ReportedBy(With(value)), crop));
        var silence = answers[0].Unanswered.FirstOrDefault(u => u.Nutrient == nutrient);
        if (silence is null && answers[0].For(nutrient) is null)
        {
            throw new ArgumentException($"{system.Name} has no {SoilWords.For(nutrient)} at all.", nameof(system));
        }

        Unanswered = silence is { IsForValue: false } ? silence : null;
        if (Unanswered is null)
        {
            reading = system.ReadingFor(nutrient, request)!.Value;
            steps = ReadingSteps.Between(printed, reading.Unit, request.Report)!.Value;
        }

        var raises = Unanswered is null ? UseKernel(new AskedForRemarks()) : NeedRemarks.None;
        flags = new(system, request, nutrient, Unanswered, raises);
        Findings = Finding.InOrder([
            .. answers
                .SelectMany(a => a.FindingsOn(nutrient))
                .Where(f => !flags.Findings.Codes.Contains(f.Code) && f.Code != ReferenceCodes.FromMemory)
                .DistinctBy(f => f.Code),
            .. system.Status == DataStatus.Memory ? new[] { MemoryGate.FindingFor(system.Name, system.Sources) } : [],
        ]);

        SoilReport With(double value) =>
            soil.Report with
            {
                Readings = [SoilReading.FromPrinted(printed.Analyte, value, printed.Unit, printed.Extractant, printed.Form)],
            };
    }

    internal PlantNutrient Nutrient { get; }

    /// <summary>Why no row is answered; null where rows are.</summary>
    internal UnansweredNutrient? Unanswered { get; }

    /// <summary>What holds for every row.</summary>
    internal ImmutableArray<Finding> Findings { get; }

    /// <summary>The loop over the rows, compiled for the system's own kernel.</summary>
    internal NeedRows Rows() =>
        Unanswered is null ? UseKernel(new RowsMaker(steps, capacity, flags)) : new UnansweredRows(Unanswered, flags);

    private T UseKernel<T>(INeedKernelUser<T> user) => system.UseKernel(request, reading, user);

    private sealed class AskedForRemarks : INeedKernelUser<NeedRemarks>
    {
        public NeedRemarks Use<TKernel>(TKernel kernel)
            where TKernel : struct, INeedKernel => kernel.Raises;
    }

    private sealed class RowsMaker(ReadingSteps steps, double capacity, NeedRowFlags flags) : INeedKernelUser<NeedRows>
    {
        public NeedRows Use<TKernel>(TKernel kernel)
            where TKernel : struct, INeedKernel => new NeedRowsBy<TKernel>(kernel, steps, capacity, flags);
    }
}
