/**
 * Sound devices, their delay measured, and the folders of the user.
 *
 * <p>The only room that knows the sound lines of the platform; others see {@link
 * org.matraloom.device.AudioOut} and {@link org.matraloom.device.AudioIn}. Positions are frames
 * that a device has counted. A device that cannot be used is a {@link
 * org.matraloom.device.DeviceException} with advice that the command line words. Entry class:
 * {@link org.matraloom.device.SoundDevices}.
 */
package org.matraloom.device;
