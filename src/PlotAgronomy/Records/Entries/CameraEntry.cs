namespace PlotAgronomy.Records;

/// <summary>Deer on the pictures of a camera, over a number of days up to the date of the entry.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed record CameraEntry : BookEntry
{
    internal const string Word = "camera";

    /// <summary>Gets the days the camera stood.</summary>
    public required int Days
    {
        get;
        init => field = Guard.AtLeast(value, 1, "days", nameof(Days));
    }

    /// <summary>Gets the pictures with deer.</summary>
    public required int Images
    {
        get;
        init => field = Guard.AtLeast(value, 0, "pictures", nameof(Images));
    }

    internal override string What => Word;

    internal override void Write(FieldWriter to)
    {
        to.Number("days", Days);
        to.Number("images", Images);
    }

    internal static CameraEntry Read(FieldReader from, DateOnly on, string plot) =>
        new()
        {
            On = on,
            Plot = plot,
            Days = from.Whole("days"),
            Images = from.Whole("images"),
        };
}
