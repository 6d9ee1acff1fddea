namespace PlotAgronomy.Calendar;

/// <summary>How what grows on the plot is got rid of before the seed.</summary>
public enum WeedWay
{
    /// <summary>Tilled two or three times, some weeks apart.</summary>
    RepeatedTillage,

    /// <summary>A quick crop that covers the ground and is killed before it sets seed.</summary>
    SmotherCrop,

    /// <summary>A herbicide, by its own label alone.</summary>
    Herbicide,

    /// <summary>A way that the owner names.</summary>
    OwnWay,
}
