using System.Collections.Immutable;
using PlotAgronomy.Nutrients;

namespace PlotAgronomy.Calendar;

/// <summary>A season to be laid out: what is sown or stands, and what is known of ground, lime and frost.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SeasonRequest
{
    /// <summary>Gets the day of sowing that all is counted from; of a standing plot any day of the year that is asked
    /// about.</summary>
    public required DateOnly SowOn { get; init; }

    /// <summary>Gets the first day on which sowing makes sense; the day itself where no window is known.</summary>
    public DateOnly? SowFrom { get; init; }

    /// <summary>Gets the last day on which sowing makes sense; the day itself where no window is known.</summary>
    public DateOnly? SowTo { get; init; }

    /// <summary>Gets a value indicating whether a stand is kept, and nothing is sown.</summary>
    public bool IsStanding { get; init; }

    /// <summary>Gets the passes, in the order of the work; of a standing plot its kinds.</summary>
    /// <exception cref="ArgumentException">None, or a null among them.</exception>
    public required ImmutableArray<SeasonPass> Passes
    {
        get;
        init
        {
            Guard.NotEmpty(Guard.Listed(value, nameof(Passes)), nameof(Passes));
            field = value;
        }
    }

    /// <summary>Gets how the ground is made ready.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Unknown way.</exception>
    public required GroundWork Ground
    {
        get;
        init => field = Guard.Defined(value, nameof(Ground));
    }

    /// <summary>Gets the day of the soil sample; null where none was taken.</summary>
    public DateOnly? SampledOn { get; init; }

    /// <summary>Gets a value indicating whether lime is to be spread.</summary>
    public bool NeedsLime { get; init; }

    /// <summary>Gets a value indicating whether lime is worked in; else it stays on the surface.</summary>
    public bool LimeIsWorkedIn { get; init; }

    /// <summary>Gets the day the lime was or will be spread; null to have it counted back.</summary>
    public DateOnly? LimeOn { get; init; }

    /// <summary>Gets the days of later dressings of lime.</summary>
    public ImmutableArray<DateOnly> LaterDressings
    {
        get;
        init => field = Guard.Made(value, nameof(LaterDressings));
    } = [];

    /// <summary>Gets a value indicating whether a kind waits for a new test of the pH.</summary>
    public bool NeedsRetest { get; init; }

    /// <summary>Gets a value indicating whether fertilizer is to be spread.</summary>
    public bool NeedsFertilizer { get; init; }

    /// <summary>Gets the parts of the nitrogen.</summary>
    public ImmutableArray<NitrogenDose> NitrogenDoses
    {
        get;
        init => field = Guard.Listed(value, nameof(NitrogenDoses));
    } = [];

    /// <summary>Gets how weeds are got rid of; null where it is not stated.</summary>
    public WeedControl? Weeds { get; init; }

    /// <summary>Gets a value indicating whether the smother crop stands already.</summary>
    public bool SmotherStands { get; init; }

    /// <summary>Gets the date of an early killing frost; null where it is not known.</summary>
    public DateOnly? KillingFrost { get; init; }

    /// <summary>Gets the day of the next sample, where the lime names one.</summary>
    public DateOnly? NextSampleOn { get; init; }

    internal ImmutableArray<CropKind> Kinds => [.. Passes.SelectMany(p => p.Kinds).Distinct()];

    internal DateOnly From => SowFrom is { } from && from < SowOn ? from : SowOn;

    internal DateOnly To => SowTo is { } to && to > SowOn ? to : SowOn;

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"season around {CalendarText.Date(SowOn)}";
}
