using PlotAgronomy.Land;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>What a pass plan is made for.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class FieldPassesRequest
{
    /// <summary>Gets the rate wanted on the ground; above 0.</summary>
    public required ApplicationRate Rate { get; init; }

    /// <summary>Gets the effective swath, the widest spacing of passes; above 0. It is not the whole throw.</summary>
    public required Length Swath { get; init; }

    /// <summary>Gets the ground speed; above 0.</summary>
    public required Speed Speed { get; init; }

    /// <summary>Gets the direction of the passes; null finds the one that throws the least seed for its turns.</summary>
    public Bearing? Along { get; init; }

    /// <summary>Gets a value indicating whether a lap is driven first, half a swath inside the edge.</summary>
    public bool HeadlandLap { get; init; }

    /// <summary>Gets where the first pass runs. A headland lap leaves it half a spacing inside the lap's strip.</summary>
    public FirstPassPlacement FirstPass { get; init; }

    /// <summary>Gets the time of one turn; at least 0.</summary>
    public TimeSpan TurnTime { get; init; }

    /// <summary>Gets the time of one refill; at least 0.</summary>
    public TimeSpan RefillTime { get; init; }

    /// <summary>Gets what the hopper holds; null when one filling is enough.</summary>
    public Mass? HopperHolds { get; init; }

    /// <summary>Gets a measured bucket, where there is no scale in the field.</summary>
    public MeasuredBucket? Bucket { get; init; }

    internal double PoundsPerAcre => Guard.Above(Rate.PoundsPerAcre, 0, "lb/ac", nameof(Rate));

    internal double PoundsPerSquareFoot => PoundsPerAcre / ExactUnits.SquareFeetPerAcre;

    internal double SwathFeet
    {
        get
        {
            double feet = Swath.Feet;
            return Guard.Above(feet, 0, "ft", nameof(Swath));
        }
    }

    internal double MilesPerHour
    {
        get
        {
            double milesPerHour = Speed.MilesPerHour;
            return Guard.Above(milesPerHour, 0, "mph", nameof(Speed));
        }
    }

    internal double? HopperPounds
    {
        get
        {
            if (HopperHolds is not { } hopper)
            {
                return null;
            }

            double pounds = hopper.Pounds;
            return Guard.Above(pounds, 0, "lb", nameof(HopperHolds));
        }
    }

    internal double TurnMinutes => Guard.AtLeast(TurnTime.TotalMinutes, 0, "min", nameof(TurnTime));

    internal double RefillMinutes => Guard.AtLeast(RefillTime.TotalMinutes, 0, "min", nameof(RefillTime));

    /// <summary>Refuses what is outside its range, and more fillings than anyone makes on this plot.</summary>
    internal void Check(PlotOutline outline)
    {
        _ = SwathFeet + MilesPerHour + TurnMinutes + RefillMinutes;
        StripLimits.Refuse(
            PoundsPerAcre * outline.Area.Acres / (HopperPounds ?? double.PositiveInfinity),
            nameof(HopperHolds),
            "fillings"
        );
    }

    internal FieldPassesRequest Towards(Bearing bearing) => With(Rate, Speed, bearing);

    internal FieldPassesRequest Spreading(ApplicationRate rate, Speed speed) => With(rate, speed, Along);

    private FieldPassesRequest With(ApplicationRate rate, Speed speed, Bearing? along) =>
        new()
        {
            Rate = rate,
            Swath = Swath,
            Speed = speed,
            Along = along,
            HeadlandLap = HeadlandLap,
            FirstPass = FirstPass,
            TurnTime = TurnTime,
            RefillTime = RefillTime,
            HopperHolds = HopperHolds,
            Bucket = Bucket,
        };

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Rate} at a swath of {Amounts.Print(Swath, "ft", 1)}";
}
