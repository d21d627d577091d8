namespace ShelfSafe.Heat;

/// <summary>A way in which the food in a jar takes up heat.</summary>
public interface IJarModel
{
    /// <summary>Follows the jar through a profile.</summary>
    /// <param name="profile">What happens around the jar.</param>
    HeatHistory Run(RetortProfile profile);
}
