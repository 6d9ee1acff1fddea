using System.Collections.Immutable;
using PlotAgronomy.Nutrients;

namespace PlotAgronomy.Calendar;

/// <summary>A season to be laid out: what is sown or stands, and what is known of ground, lime and frost.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SeasonRequest
{
    /// <summary>Gets the day of sowing that all is counted from; of a standing plot any day of the year that is asked about. Null
    /// while it is not set: tasks then say what they hang on instead of days.</summary>
    public required DateOnly? SowOn { get; init; }

    /// <summary>Gets the first day on which sowing makes sense; the day itself where no window is known.</summary>
    public DateOnly? SowFrom { get; init; }

    /// <summary>Gets the last day on which sowing makes sense; the day itself where no window is known.</summary>
    public DateOnly? SowTo { get; init; }

    /// <summary>Gets a value indicating whether a stand is kept, and nothing is sown.</summary>
    public bool IsStanding { get; init; }

    /// <summary>Gets the passes, in the order of the work; of a standing plot its kinds; none where nothing is sown.</summary>
    /// <exception cref="ArgumentException">A list that was never made, or with a null in it.</exception>
    public required ImmutableArray<SeasonPass> Passes
    {
        get;
        init => field = Guard.Listed(value, nameof(Passes));
    }

    /// <summary>Gets how the ground is made ready; null while it is not settled.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Unknown way.</exception>
    public required GroundWork? Ground
    {
        get;
        init => field = Guard.Defined(value, nameof(Ground));
    }

    /// <summary>Gets what stands on the plot and has to go; null where nobody says.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Unknown cover.</exception>
    public GroundCover? Cover
    {
        get;
        init => field = Guard.Defined(value, nameof(Cover));
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

    /// <summary>What other rooms chose for it.</summary>
    internal SeasonChoices Chosen { get; init; } = new();

    internal ImmutableArray<CropKind> Kinds => [.. Passes.SelectMany(p => p.Kinds).Distinct()];

    internal bool IsSowing => !IsStanding && !Passes.IsEmpty;

    /// <summary>Whether it is sown in fall, else in spring; null while neither a day nor frozen ground tells.</summary>
    internal bool? IsFallSowing =>
        SowOn is { } on ? on.DayOfYear >= CalendarConstants.Days("fall-from")
        : Ground == GroundWork.FrostSeeded ? false
        : null;

    /// <summary>The days of sowing; null while the day is not set.</summary>
    internal DayWindow? SowingDays =>
        SowOn is { } on ? new(SowFrom is { } from && from < on ? from : on, SowTo is { } to && to > on ? to : on) : null;

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => SowOn is { } on ? $"season around {CalendarText.Date(on)}" : "season, its day not set";
}
