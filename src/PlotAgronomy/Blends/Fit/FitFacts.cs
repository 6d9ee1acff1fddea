using System.Collections.Immutable;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>What a blend and a plot say together, before anything is remarked on.</summary>
internal sealed class FitFacts
{
    internal FitFacts(BlendBatch batch, BlendFitRequest request)
    {
        Batch = batch;
        Request = request;
        Passes = BlendPasses.Of(batch.Blend);
        Inoculants =
        [
            .. batch
                .Lines.Where(l => l.Component.Kind.InoculantGroup is not null && !l.Component.IsInoculated)
                .Select(l => InoculantNeed.For(l.Component.Kind, l.Weight)),
        ];
        Dates = request.Region is { } region ? CommonDates.For(batch.Blend, region) : null;
    }

    internal BlendBatch Batch { get; }

    internal BlendFitRequest Request { get; }

    internal ImmutableArray<BlendPart> Parts => Batch.Blend.Parts;

    internal ImmutableArray<SeedPass> Passes { get; }

    internal ImmutableArray<InoculantNeed> Inoculants { get; }

    internal CommonDates? Dates { get; }

    /// <summary>The kinds of the coming stand, sown and standing.</summary>
    internal StandMember[] Members => StandMember.Of(Batch.Blend, Request.Standing);

    /// <summary>Highest minimum and lowest maximum of the pH limits; crossed when no pH suits all, null when none is
    /// known.</summary>
    internal (double Low, double High)? PhSpan
    {
        get
        {
            PhTolerance[] known = [.. Parts.Select(p => p.Kind.Ph).OfType<PhTolerance>()];
            return known.Length == 0 ? null : (known.Max(p => p.MinimumPh), known.Min(p => p.MaximumPh));
        }
    }

    /// <summary>Driest of the wettest limits and wettest of the driest; crossed when no soil suits all, null when none is
    /// known.</summary>
    internal (DrainageClass Wettest, DrainageClass Driest)? DrainageSpan
    {
        get
        {
            DrainageTolerance[] known = [.. Parts.Select(p => p.Kind.Drainage).OfType<DrainageTolerance>()];
            return known.Length == 0 ? null : (known.Max(d => d.Wettest), known.Min(d => d.Driest));
        }
    }
}
