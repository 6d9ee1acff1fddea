namespace PlotAgronomy.Seeds;

/// <summary>Broad regions of the eastern United States for planting dates.</summary>
public enum PlantingRegion
{
    /// <summary>About hardiness zones 3 to 5a: upper Midwest, New York, New England, north and central Pennsylvania.</summary>
    North,

    /// <summary>About zones 5b to 7a: Corn Belt, Ohio valley, Missouri, Virginia, southeast Pennsylvania.</summary>
    Central,

    /// <summary>About zones 7b to 9: Gulf and South Atlantic states, East Texas.</summary>
    South,
}
